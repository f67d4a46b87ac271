import { type Picture, withBytes } from "../../inspection/pictures.ts";
import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import { newId } from "../editing/newId.ts";

/** Longest side that a photograph is kept with, in pixels: enough to see a thread's flank, a few hundred kilobytes. */
const LONGEST = 1600;
/** What is smaller than this, in bytes, and no longer than that, is kept byte for byte. */
const SMALL = 1_000_000;
/** What every browser shows. */
const WEB_TYPES = ["image/jpeg", "image/png", "image/webp"];
const QUALITY = 0.85;

/** A photograph as it is to be kept: with its bytes, upright, and no larger than it need be. */
export async function shrunk(file: File): Promise<Outcome<Picture>> {
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file);
  } catch {
    const cure = "Choose a photograph in JPEG, PNG or WebP.";
    return failed(file.name, "this browser cannot show it as a picture", cure);
  }
  const { width, height } = bitmap;
  const id = newId();
  const longest = Math.max(width, height);
  if (longest <= LONGEST && file.size <= SMALL && WEB_TYPES.includes(file.type)) {
    bitmap.close();
    const bytes = new Uint8Array(await file.arrayBuffer());
    return succeeded(withBytes({ id, type: file.type, width, height, name: file.name }, bytes));
  }
  const scale = Math.min(1, LONGEST / longest);
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(width * scale));
  canvas.height = Math.max(1, Math.round(height * scale));
  const made = await drawn(bitmap, canvas);
  bitmap.close();
  if (made === null) return failed(file.name, "it could not be made smaller", "Choose a smaller photograph.");
  const picture = { id, type: made.type, width: canvas.width, height: canvas.height, name: file.name };
  return succeeded(withBytes(picture, new Uint8Array(await made.arrayBuffer())));
}

function drawn(bitmap: ImageBitmap, canvas: HTMLCanvasElement): Promise<Blob | null> {
  const context = canvas.getContext("2d");
  if (context === null) return Promise.resolve(null);
  // JPEG knows no transparency, and would show it black.
  context.fillStyle = "white";
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.imageSmoothingQuality = "high";
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  return new Promise((done) => canvas.toBlob(done, "image/jpeg", QUALITY));
}
