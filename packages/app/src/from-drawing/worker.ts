import { readDrawing } from "@baywright/sheets/read";

self.onmessage = ({ data }: MessageEvent<Uint8Array>) => self.postMessage(readDrawing(data));
