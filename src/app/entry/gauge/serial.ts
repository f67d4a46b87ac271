/** As much of Web Serial as this page uses; the language's own types do not have it. https://wicg.github.io/serial/ */

export interface SerialOptions {
  readonly baudRate: number;
  readonly dataBits: 7 | 8;
  readonly stopBits: 1 | 2;
  readonly parity: "none" | "even" | "odd";
}

export interface SerialPort {
  readonly readable: ReadableStream<Uint8Array> | null;
  open(options: SerialOptions): Promise<void>;
  close(): Promise<void>;
  setSignals(signals: {
    readonly dataTerminalReady: boolean;
    readonly requestToSend: boolean;
  }): Promise<void>;
}

interface Serial {
  requestPort(): Promise<SerialPort>;
  getPorts(): Promise<readonly SerialPort[]>;
}

/** The browser's serial ports; null where it offers none. */
export function serialPorts(): Serial | null {
  return "serial" in navigator ? (navigator.serial as Serial) : null;
}
