const FINEST = 64;

/** Inches as the trade writes them: `1 1/4`, `0.138`. */
export function inchWords(inches: number): string {
  const parts = Math.round(inches * FINEST);
  if (Math.abs(inches * FINEST - parts) > 1e-6) return String(Number(inches.toFixed(4)));
  const whole = Math.floor(parts / FINEST);
  const rest = parts % FINEST;
  if (rest === 0) return String(whole);
  const common = commonDivisor(rest, FINEST);
  const fraction = `${rest / common}/${FINEST / common}`;
  return whole === 0 ? fraction : `${whole} ${fraction}`;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
