import { html, LitElement, unsafeCSS } from "lit";
import { customElement, state } from "lit/decorators.js";
import { controls, fold } from "../../ui/sharedStyles.ts";
import { type Connection, connect } from "./connection.ts";
import gaugePanelCss from "./gaugePanel.css?inline";
import { numbersIn, patternOf, valueIn } from "./numberInLine.ts";
import { type SerialOptions, type SerialPort, serialPorts } from "./serial.ts";
import { BAUD_RATES, FORMATS, type GaugeSettings, gaugeSettings, keepGaugeSettings } from "./settings.ts";
import { type Taker, takerOf } from "./takeReading.ts";

declare global {
  interface HTMLElementEventMap {
    /** A value from the gauge, as it stands in its line. */
    "tightspot-gauge-value": CustomEvent<string>;
  }
}

/** A gauge on a serial cable: connected, its line shown, its number picked, its value taken. */
@customElement("tightspot-gauge")
export class GaugePanel extends LitElement {
  static override styles = [controls, fold, unsafeCSS(gaugePanelCss)];

  @state() private settings: GaugeSettings = gaugeSettings();
  @state() private connection: Connection | null = null;
  @state() private line = "";
  @state() private problem = "";

  #taker: Taker | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.settings.isConnected) void this.#connectAgain();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    void this.#close();
  }

  override render() {
    const isConnected = this.connection !== null;
    return html`<details>
      <summary>Gauge on a cable <span class="state">${isConnected ? "connected" : "not connected"}</span></summary>
      <div class="content">
        ${isConnected ? this.#connected() : this.#unconnected()}
        <p class="wrong" role="alert">${this.problem}</p>
      </div>
    </details>`;
  }

  #unconnected() {
    const { baudRate, format } = this.settings;
    return html`<p class="hint">
        A gauge that types its value like a keyboard needs none of this. One on a serial cable, or an adapter that
        appears as a serial port, is connected here.
      </p>
      <div class="pair">
        <label>
          <span class="label">Baud rate</span>
          <select @change=${(event: Event) => this.#set({ baudRate: Number(chosenIn(event)) })}>
            ${BAUD_RATES.map((rate) => html`<option ?selected=${rate === baudRate}>${rate}</option>`)}
          </select>
        </label>
        <label>
          <span class="label">Data, parity, stop</span>
          <select @change=${(event: Event) => this.#set({ format: chosenIn(event) as GaugeSettings["format"] })}>
            ${FORMATS.map((each) => html`<option ?selected=${each === format}>${each}</option>`)}
          </select>
        </label>
      </div>
      <button type="button" @click=${() => this.#connect()}>Connect a gauge</button>`;
  }

  #connected() {
    const { line, settings } = this;
    const value = valueIn(line, settings.pick);
    return html`<p class="label" id="line">What the gauge sent last; press the number that is its value</p>
      <div class="line" role="group" aria-labelledby="line">
        ${line === "" ? html`<span class="hint">Nothing yet: press the gauge’s button.</span>` : this.#numbers(line)}
      </div>
      <p>Value: <strong class="figures">${value ?? "none"}</strong></p>
      <button type="button" ?disabled=${value === null} @click=${() => value !== null && this.#take(value)}>
        Take this value
      </button>
      <label class="check">
        <input
          type="checkbox"
          .checked=${settings.takesByItself}
          @change=${() => this.#set({ takesByItself: !settings.takesByItself })}
        />
        <span>Take each value that the gauge’s button sends</span>
      </label>
      <label>
        <span class="label">A pattern of your own, where pressing a number is not enough</span>
        <input
          autocomplete="off"
          spellcheck="false"
          placeholder="X=([-+.0-9]+)"
          .value=${settings.pick.by === "pattern" ? settings.pick.pattern : ""}
          @change=${({ target }: Event) => this.#setPattern((target as HTMLInputElement).value.trim())}
        />
      </label>
      <button type="button" class="quiet" @click=${() => this.#disconnect()}>Disconnect</button>`;
  }

  #numbers(line: string) {
    const { pick } = this.settings;
    const numbers = numbersIn(line);
    const value = valueIn(line, pick);
    const chosen = pick.by === "place" ? pick.place : numbers.findIndex(({ text }) => text === value);
    const end = numbers.reduce(
      (at, { before, text }) => line.indexOf(text, at + before.length) + text.length,
      0,
    );
    return html`${numbers.map(
      ({ before, text }, place) => html`<span>${before}</span
        ><button
          type="button"
          aria-pressed=${place === chosen}
          @click=${() => this.#set({ pick: { by: "place", place } })}
        >
          ${text}
        </button>`,
    )}<span>${line.slice(end)}</span>`;
  }

  #set(part: Partial<GaugeSettings>): void {
    this.settings = { ...this.settings, ...part };
    this.problem = "";
    keepGaugeSettings(this.settings);
  }

  #setPattern(pattern: string): void {
    if (pattern !== "" && patternOf(pattern) === null) {
      this.problem = "This is no pattern (a regular expression): see whether each bracket is closed.";
      return;
    }
    this.#set({ pick: pattern === "" ? { by: "itself" } : { by: "pattern", pattern } });
  }

  async #connect(): Promise<void> {
    this.problem = "";
    let port: SerialPort | undefined;
    try {
      port = await serialPorts()?.requestPort();
    } catch {
      // The reader chose none.
      return;
    }
    if (port !== undefined) await this.#open(port);
  }

  /** The gauge that was connected when the page was left, where there is no doubt which. */
  async #connectAgain(): Promise<void> {
    const [port, ...others] = (await serialPorts()?.getPorts()) ?? [];
    if (port !== undefined && others.length === 0) await this.#open(port);
  }

  async #open(port: SerialPort): Promise<void> {
    this.#taker = takerOf(
      (value) => this.#take(value),
      () => this.#flooded(),
    );
    try {
      this.connection = await connect(
        port,
        optionsOf(this.settings),
        (line) => this.#heard(line),
        (why) => this.#lost(why),
      );
      this.#set({ isConnected: true });
    } catch (error) {
      const said = error instanceof Error ? ` (${error.message})` : "";
      this.problem = `The port cannot be opened${said}. Another program may have it: close that, and connect again.`;
    }
  }

  #heard(line: string): void {
    this.line = line;
    const value = valueIn(line, this.settings.pick);
    if (value !== null && this.settings.takesByItself) this.#taker?.came(value);
  }

  #take(value: string): void {
    this.dispatchEvent(
      new CustomEvent("tightspot-gauge-value", { detail: value, bubbles: true, composed: true }),
    );
  }

  #flooded(): void {
    this.#set({ takesByItself: false });
    this.problem =
      "The gauge sends faster than a slide can be moved, so its values are not taken by themselves any more. Look at the readings taken last; take each value with the button.";
    this.renderRoot.querySelector("details")?.setAttribute("open", "");
  }

  #lost(why: string): void {
    this.connection = null;
    this.problem = `${why} Connect it again; what was taken is kept.`;
  }

  async #disconnect(): Promise<void> {
    this.#set({ isConnected: false });
    await this.#close();
  }

  async #close(): Promise<void> {
    const { connection } = this;
    this.connection = null;
    this.line = "";
    this.#taker?.close();
    await connection?.close();
  }
}

function chosenIn({ target }: Event): string {
  return (target as HTMLSelectElement).value;
}

function optionsOf({ baudRate, format }: GaugeSettings): SerialOptions {
  const parity = { N: "none", E: "even", O: "odd" } as const;
  return {
    baudRate,
    dataBits: format.startsWith("7") ? 7 : 8,
    parity: parity[format.charAt(1) as keyof typeof parity],
    stopBits: format.endsWith("2") ? 2 : 1,
  };
}
