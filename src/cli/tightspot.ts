#!/usr/bin/env node
import { main } from "./main.ts";
import { endQuietlyOnClosedPipe } from "./output.ts";

endQuietlyOnClosedPipe();
process.exitCode = await main(process.argv.slice(2));
