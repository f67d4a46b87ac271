import { spawn } from "node:child_process";

/** Opens an address in the browser of this machine; does nothing where there is none. */
export function openInBrowser(address: string): void {
  const [program, ...words] = openerOf(process.platform);
  const opener = spawn(program, [...words, address], { detached: true, stdio: "ignore" });
  // Without an opener the address that was written is all there is to go by.
  opener.on("error", () => undefined);
  opener.unref();
}

function openerOf(platform: NodeJS.Platform): readonly [string, ...string[]] {
  if (platform === "darwin") return ["open"];
  // The empty word is the window's title, without which `start` takes the address for it.
  return platform === "win32" ? ["cmd", "/c", "start", ""] : ["xdg-open"];
}
