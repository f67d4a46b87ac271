import { inspectionText } from "../../inspection/open.ts";
import type { Inspection } from "../../inspection/schema.ts";

/** Hands the inspection to the reader as a file, named after the slide. */
export function saveFile(inspection: Inspection): void {
  const file = new Blob([inspectionText(inspection)], { type: "application/json" });
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = `${fileName(inspection.slide.name)}.json`;
  link.click();
  // The download reads the address after this returns.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

function fileName(name: string): string {
  const plain = name.trim().replace(/[^\p{L}\p{N}]+/gu, "-");
  return plain.replace(/^-|-$/g, "") || "inspection";
}
