const FORMS: Readonly<Record<string, string>> = {
  "acme-29": "Acme 29°",
  "stub-acme-29": "Stub Acme 29°",
  "trapezoidal-30": "trapezoidal 30°",
  square: "square thread",
  "unified-60": "unified 60°",
  "metric-60": "metric 60°",
  "whitworth-55": "Whitworth 55°",
};

/** A thread form by its name in the file, as the trade writes it; one that is not known stays as it is. */
export function formWords(form: string): string {
  return FORMS[form] ?? form;
}
