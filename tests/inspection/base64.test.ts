import fc from "fast-check";
import { expect, test } from "vitest";
import { decodeBase64, encodeBase64 } from "../../src/inspection/base64.ts";

test("bytes are written as another program writes them, and read back as they were", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
      expect(encodeBase64(bytes)).toBe(Buffer.from(bytes).toString("base64"));
      expect(decodeBase64(encodeBase64(bytes))).toEqual(Uint8Array.from(bytes));
    }),
  );
});

test("many bytes are put together without a seam", () => {
  const bytes = Uint8Array.from({ length: 100_001 }, (_, index) => (index * 7919) % 256);
  expect(encodeBase64(bytes)).toBe(Buffer.from(bytes).toString("base64"));
});

test("what is no base64 stands for nothing", () => {
  expect(decodeBase64("%%%%")).toBe(null);
});
