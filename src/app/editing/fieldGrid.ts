import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import { type Settings, settingsOf } from "../../analysis/decide/settings.ts";
import { lengthsIn } from "../../inspection/lengths.ts";
import { slideInMillimetres } from "../../inspection/metric.ts";
import type { Slide, Survey } from "../../inspection/schema.ts";
import { fromMillimetres, roundTo, type Units } from "../../inspection/units.ts";
import type { EditorState } from "../../records/editorState.ts";
import { controls } from "../ui/sharedStyles.ts";
import type { Field } from "./fieldList.ts";
import { showField } from "./fieldValues.ts";
import type { InspectionEditor } from "./inspectionEditor.ts";
import "./fieldBox.ts";
import fieldGridCss from "./fieldGrid.css?inline";

/** Fields of the slide or of one survey in columns. */
@customElement("tightspot-field-grid")
export class FieldGrid extends LitElement {
  static override styles = [controls, unsafeCSS(fieldGridCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) editorState: EditorState | null = null;
  @property({ attribute: false }) survey: Survey | null = null;
  /** The id of the survey that the fields belong to; null for the slide. */
  @property({ attribute: false }) of: string | null = null;
  @property({ attribute: false }) fields: readonly Field[] = [];

  override render() {
    const { editorState, survey } = this;
    if (editorState === null || editorState.inspection === null) return nothing;
    const { slide } = editorState.inspection;
    const { settings } = settingsOf(slideInMillimetres(slide), lengthsIn(slide.units));
    return this.fields
      .filter(({ when }) => when === undefined || (survey !== null && when({ slide, survey })))
      .map((field) => this.#field(field, editorState, slide, settings));
  }

  #field(field: Field, editorState: EditorState, { units }: Slide, settings: Settings) {
    const place = { survey: this.of, path: field.path };
    const { text, problem } = showField(editorState, place);
    return html`<tightspot-field
      .field=${field}
      .text=${text}
      .problem=${problem}
      .assumed=${assumedWords(field, settings, units)}
      .units=${units}
      @tightspot-typed=${({ detail }: CustomEvent<string>) => this.editor?.enterField(place, detail)}
    ></tightspot-field>`;
  }
}

/** The value assumed if a field is empty, in words; lengths in `units`. */
export function assumedWords({ assumed }: Field, settings: Settings, units: Units): string {
  const value = assumed?.(settings) ?? "";
  if (typeof value === "string") return value;
  return `${roundTo(fromMillimetres(value, units), units === "in" ? 4 : 3)} (assumed)`;
}
