/**
 * A text as a string of a style sheet, its quotes included. All but letters of the alphabet, figures and spaces is
 * written by its number, so that nothing in it can end the string or the style sheet.
 */
export function cssText(text: string): string {
  const written = Array.from(text, (letter) =>
    /[A-Za-z0-9 ]/.test(letter) ? letter : `\\${(letter.codePointAt(0) ?? 0).toString(16)} `,
  );
  return `"${written.join("")}"`;
}
