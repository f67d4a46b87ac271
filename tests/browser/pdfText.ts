import { inflateSync } from "node:zlib";

/** A page of a PDF as Chromium prints it. */
export interface PdfPage {
  /** In points. */
  readonly width: number;
  readonly height: number;
  /** What stands on the page, in the order in which it was painted. */
  readonly text: string;
}

interface PdfObject {
  readonly head: string;
  /** What the object's stream holds, unpacked; empty where it has none. */
  readonly content: string;
}

/** The pages of a PDF made by Chromium, whose objects are plain and whose text is written by glyph and mapped back. */
export function pdfPages(pdf: Buffer): readonly PdfPage[] {
  const objects = objectsOf(pdf);
  const at = (reference: string | undefined): PdfObject => {
    const found = objects.get(Number(reference));
    if (found === undefined) throw new Error(`There is no object ${reference} in the PDF.`);
    return found;
  };
  const heads = [...objects.values()].map(({ head }) => head);
  const root = heads.find((head) => head.includes("/Type /Pages") && !head.includes("/Parent")) ?? "";
  return pageHeads(root, (reference) => at(reference).head).map((head) => {
    const [, width, height] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(head) ?? [];
    const fonts = new Map(
      [...(/\/Font <<([^>]*)>>/.exec(head)?.[1] ?? "").matchAll(/\/(F\d+) (\d+) 0 R/g)].map(
        ([, name, font]) => [name, lettersOf(at(/\/ToUnicode (\d+) 0 R/.exec(at(font).head)?.[1]).content)],
      ),
    );
    const contents = at(/\/Contents (\d+) 0 R/.exec(head)?.[1]).content;
    return { width: Number(width), height: Number(height), text: textOf(contents, fonts) };
  });
}

/** The heads of the pages under a node of the tree that they are kept in, eight to a branch. */
function pageHeads(node: string, headOf: (reference: string | undefined) => string): readonly string[] {
  const kids = /\/Kids \[([^\]]*)\]/.exec(node)?.[1];
  if (kids === undefined) return [node];
  return [...kids.matchAll(/(\d+) 0 R/g)].flatMap(([, reference]) => pageHeads(headOf(reference), headOf));
}

function objectsOf(pdf: Buffer): ReadonlyMap<number, PdfObject> {
  const text = pdf.toString("latin1");
  return new Map(
    [...text.matchAll(/^(\d+) 0 obj\n([\s\S]*?)endobj/gm)].map(([, number, body]) => {
      const begin = body.indexOf("stream\n");
      if (begin === -1) return [Number(number), { head: body, content: "" }];
      const head = body.slice(0, begin);
      const packed = Buffer.from(body.slice(begin + "stream\n".length), "latin1");
      const content = head.includes("/FlateDecode") ? inflateSync(packed).toString("latin1") : "";
      return [Number(number), { head, content }];
    }),
  );
}

/** What each glyph of a font stands for. */
function lettersOf(map: string): ReadonlyMap<string, string> {
  const letters = new Map<string, string>();
  const hex = (code: number): string => code.toString(16).toUpperCase().padStart(4, "0");
  for (const [, block] of map.matchAll(/beginbfchar\n([\s\S]*?)endbfchar/g)) {
    for (const [, glyph, code] of block.matchAll(/<(\w+)> <(\w+)>/g)) letters.set(glyph, written(code));
  }
  for (const [, block] of map.matchAll(/beginbfrange\n([\s\S]*?)endbfrange/g)) {
    for (const [, first, last, code] of block.matchAll(/<(\w+)> <(\w+)> <(\w+)>/g)) {
      const start = Number.parseInt(first, 16);
      for (let glyph = start; glyph <= Number.parseInt(last, 16); glyph++)
        letters.set(hex(glyph), written(hex(Number.parseInt(code, 16) + glyph - start)));
    }
  }
  return letters;
}

/** The letters that a code in UTF-16 stands for, ligatures taken apart. */
function written(code: string): string {
  const units = (code.match(/.{4}/g) ?? []).map((unit) => Number.parseInt(unit, 16));
  return String.fromCharCode(...units).normalize("NFKC");
}

function textOf(contents: string, fonts: ReadonlyMap<string, ReadonlyMap<string, string>>): string {
  return [...contents.matchAll(/BT\n([\s\S]*?)ET/g)]
    .map(([, run]) => {
      const letters = fonts.get(/\/(F\d+) /.exec(run)?.[1] ?? "");
      const glyphs = [...run.matchAll(/<(\w+)> Tj/g)].flatMap(([, shown]) => shown.match(/.{4}/g) ?? []);
      return glyphs.map((glyph) => letters?.get(glyph) ?? "\ufffd").join("");
    })
    .join("\n");
}
