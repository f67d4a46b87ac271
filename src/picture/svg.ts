/** The font of every picture: that of the system. */
export const FONT = "system-ui, 'Segoe UI', Roboto, 'Helvetica Neue', Arial, sans-serif";

/** Attributes of an SVG element. */
export type Attributes = Readonly<Record<string, string | number>>;

/** Coordinates are written to a hundredth of a pixel. */
const COORDINATE_DECIMALS = 2;

/** An SVG element as text. Attribute values are escaped; children are markup. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${escapeMarkup(typeof value === "number" ? coordinate(value) : value)}"`)
    .join("");
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join("")}</${name}>`;
}

interface TextStyle {
  readonly size: number;
  readonly fill: string;
  readonly anchor?: "start" | "middle" | "end";
  readonly weight?: number;
  /** Colour of the outline that separates the text from the background. */
  readonly rim?: string;
}

const RIM_WIDTH = 4;

/** A line of text; x and y are a point of its baseline, in pixels. */
export function textElement(x: number, y: number, content: string, style: TextStyle): string {
  const { size, fill, anchor = "start", weight = 400, rim } = style;
  const rimmed =
    rim === undefined
      ? {}
      : { stroke: rim, "stroke-width": RIM_WIDTH, "stroke-linejoin": "round", "paint-order": "stroke" };
  return element(
    "text",
    { x, y, fill, "font-size": size, "font-weight": weight, "text-anchor": anchor, ...rimmed },
    escapeMarkup(content),
  );
}

/** Text escaped for use between tags and in attributes. */
export function escapeMarkup(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

/** A path through the points, in pixels. */
export function pathThrough(points: readonly { readonly x: number; readonly y: number }[]): string {
  return points
    .map(({ x, y }, index) => `${index === 0 ? "M" : "L"}${coordinate(x)} ${coordinate(y)}`)
    .join("");
}

function coordinate(value: number): string {
  return String(Number(value.toFixed(COORDINATE_DECIMALS)));
}
