import { html, LitElement, nothing, type PropertyValues, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { type Picture, pictureAddress } from "../../inspection/pictures.ts";
import { selfContained } from "../../records/pictures.ts";
import { controls } from "../ui/sharedStyles.ts";
import photographCss from "./photograph.css?inline";

/** What stands for a photograph where it cannot be seen. */
export function pictureWords({ caption, name }: Picture): string {
  return caption || (name === undefined ? "Photograph" : `Photograph ${name}`);
}

/** A photograph, with its bytes from where they are kept. */
@customElement("tightspot-photograph")
export class Photograph extends LitElement {
  static override styles = [controls, unsafeCSS(photographCss)];

  @property({ attribute: false }) picture: Picture | null = null;

  /** Null until it is known whether it is kept. */
  @state() private whole: Picture | null = null;

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { picture } = this;
    if (!changed.has("picture") || picture === null || picture.id === this.whole?.id) return;
    this.whole = null;
    void selfContained(picture).then(({ data }) => {
      if (this.picture?.id === picture.id) this.whole = data;
    });
  }

  override render() {
    const { picture, whole } = this;
    if (picture === null || whole === null) return nothing;
    const address = pictureAddress(whole);
    const words = pictureWords(picture);
    return address === null
      ? html`<p>${words}: this browser no longer has it.</p>`
      : html`<img src=${address} alt=${words} width=${picture.width} height=${picture.height} />`;
  }
}
