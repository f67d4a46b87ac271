import { lineSplitter } from "./lineSplitter.ts";
import type { SerialOptions, SerialPort } from "./serial.ts";

export interface Connection {
  close(): Promise<void>;
}

/**
 * Opens a port and tells of every line that comes in, until it is closed or lost. Throws what the browser throws where
 * the port cannot be opened.
 *
 * @param lost is told why nothing comes in any more, unless it was closed here
 */
export async function connect(
  port: SerialPort,
  options: SerialOptions,
  tell: (line: string) => void,
  lost: (why: string) => void,
): Promise<Connection> {
  await port.open(options);
  // Cables draw their power from these lines; an adapter without them does without.
  await port.setSignals({ dataTerminalReady: true, requestToSend: true }).catch(() => {});
  const cutter = lineSplitter(tell);
  const decoder = new TextDecoder("windows-1252");
  let reader: ReadableStreamDefaultReader<Uint8Array> | undefined;
  let isClosed = false;

  const listen = async (): Promise<void> => {
    // After a disturbance, such as a wrong parity, the port gives another stream; none is left once it is unplugged.
    while (!isClosed && port.readable !== null) {
      reader = port.readable.getReader();
      try {
        for (let read = await reader.read(); !read.done; read = await reader.read()) {
          cutter.add(decoder.decode(read.value, { stream: true }));
        }
        break;
      } catch (error) {
        if (port.readable === null) throw error;
      } finally {
        reader.releaseLock();
      }
    }
  };
  const listening = listen().then(
    () => {
      if (!isClosed) lost("The gauge sends nothing any more.");
    },
    () => lost("The cable was unplugged."),
  );

  return {
    async close() {
      isClosed = true;
      cutter.close();
      await reader?.cancel().catch(() => {});
      await listening;
      await port.close().catch(() => {});
    },
  };
}
