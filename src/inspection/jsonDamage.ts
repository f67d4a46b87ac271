type Expected = "value" | "value or ]" | "key" | "key or }" | ":" | ", or end";

const SPACE = /[ \t\n\r]*/y;
const MARK_OR_WORD = /[{}[\]:,]|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;
/** A stretch within a string; strings are scanned by stretches because a picture may be one of many megabytes. */
const STRETCH = /[^"\\\n\r]{1,65536}|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/**
 * Where a text stops being JSON: the index of the first token that cannot stand where it does, or of the end where
 * the text breaks off. What `JSON.parse` says of the place differs from engine to engine, and is often nothing.
 */
export function damagedAt(text: string): number {
  const open: string[] = [];
  let expected: Expected | undefined = "value";
  let at = 0;
  for (;;) {
    at += matchAt(SPACE, text, at).length;
    const token = text[at] === '"' ? stringAt(text, at) : matchAt(MARK_OR_WORD, text, at);
    expected = token === "" ? undefined : after(token, expected, open);
    if (expected === undefined) return at;
    at += token.length;
  }
}

function matchAt(pattern: RegExp, text: string, at: number): string {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? "";
}

/** The string that begins there, quotes included, or nothing where it is not closed. */
function stringAt(text: string, start: number): string {
  let end = start + 1;
  for (let stretch = " "; stretch !== ""; end += stretch.length) stretch = matchAt(STRETCH, text, end);
  return text[end] === '"' ? text.slice(start, end + 1) : "";
}

/** What may follow the token, or nothing where the token itself may not stand; keeps track of what is open. */
function after(token: string, expected: Expected, open: string[]): Expected | undefined {
  const container = open.at(-1);
  switch (token) {
    case ":":
      return expected === ":" ? "value" : undefined;
    case ",":
      if (expected !== ", or end" || container === undefined) return undefined;
      return container === "{" ? "key" : "value";
    case "}":
      if (container !== "{" || (expected !== "key or }" && expected !== ", or end")) return undefined;
      open.pop();
      return ", or end";
    case "]":
      if (container !== "[" || (expected !== "value or ]" && expected !== ", or end")) return undefined;
      open.pop();
      return ", or end";
  }
  if (token.startsWith('"') && (expected === "key" || expected === "key or }")) return ":";
  if (expected !== "value" && expected !== "value or ]") return undefined;
  if (token !== "{" && token !== "[") return ", or end";
  open.push(token);
  return token === "{" ? "key or }" : "value or ]";
}
