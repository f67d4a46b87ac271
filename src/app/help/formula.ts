import { html, mathml } from "lit";

/**
 * A formula as MathML, from signs with spaces between them: names, figures and operators, `w_1` for a sign with an
 * index. Names of one letter slant, as in print; words do not.
 */
export function formula(text: string) {
  return html`<math display="block">${text.split(" ").map(sign)}</math>`;
}

function sign(token: string): ReturnType<typeof mathml> {
  const [base, index] = token.split("_");
  if (base !== undefined && index !== undefined)
    return mathml`<msub>${sign(base)}<mrow>${sign(index)}</mrow></msub>`;
  if (/^[\d.]+$/.test(token)) return mathml`<mn>${token}</mn>`;
  if (/^[\p{L}²′-]+$/u.test(token)) return mathml`<mi>${token}</mi>`;
  return mathml`<mo>${token}</mo>`;
}
