import { html, mathml } from "lit";

/**
 * A formula as MathML, from signs with spaces between them: names, figures and operators, `w_1` for a sign with an
 * index. Names of one letter slant, as in print; words do not.
 *
 * @param parts the formula; where it is too long for a narrow screen, in parts between which its line may break
 */
export function formula(...parts: readonly string[]) {
  const set = parts.map((part) => html`<math>${part.split(" ").map(sign)}</math> `);
  return html`<div class="formula">${set}</div>`;
}

function sign(token: string): ReturnType<typeof mathml> {
  const [base, index] = token.split("_");
  if (base !== undefined && index !== undefined)
    return mathml`<msub>${sign(base)}<mrow>${sign(index)}</mrow></msub>`;
  if (/^[\d.]+$/.test(token)) return mathml`<mn>${token}</mn>`;
  if (/^[\p{L}²′-]+$/u.test(token)) return mathml`<mi>${token}</mi>`;
  return mathml`<mo>${token}</mo>`;
}
