import type { ListEntry } from "../../records/editorState.ts";

/** The entries whose name or machine hold every word that was typed; case and accents make no difference. */
export function search(entries: readonly ListEntry[], typed: string): readonly ListEntry[] {
  const words = plain(typed).split(/\s+/).filter(Boolean);
  return entries.filter(({ name, machine }) => {
    const text = plain(`${name ?? ""} ${machine ?? ""}`);
    return words.every((word) => text.includes(word));
  });
}

function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{Mark}/gu, "")
    .toLowerCase();
}
