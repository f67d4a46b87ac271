import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";

/** Two pictures of a web type, byte for byte as they lie on a disk. */
const ICONS = ["src/app/public/icon-192.png", "src/app/public/icon-512.png"] as const;
export const SMALL = readFileSync(ICONS[0]);
export const LARGER = readFileSync(ICONS[1]);

/** A picture as a file carries it, named after its bytes. */
export function pictureOf(bytes: Buffer, side: number) {
  const id = createHash("sha256").update(bytes).digest("hex").slice(0, 24);
  return {
    id,
    type: "image/png",
    width: side,
    height: side,
    caption: "The nut before it was taken up",
    data: bytes.toString("base64"),
  };
}

/** An inspection with two events, one of them with photographs, as a file. */
export function withPhotographs(): string {
  const inspection = JSON.parse(
    readFileSync("sample-data/before-and-after-lathe-1-cross-slide.json", "utf8"),
  );
  const events = [
    {
      date: "2026-02-03",
      kind: "adjusted",
      note: "Nut taken up by 0.2 mm.",
      pictures: [pictureOf(SMALL, 192), pictureOf(LARGER, 512), { sketch: "of another program" }],
    },
    { date: "2026-02-04", kind: "other", note: "Gib set." },
  ];
  return `${JSON.stringify({ ...inspection, events }, null, 2)}\n`;
}
