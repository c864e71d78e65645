const longest = 1600;
const most = 1536 * 1024;

/**
 * A JPEG without anything that is not the picture. Browsers write Exif, colour
 * profiles or comments into what they draw; the server refuses them, for they
 * may say more than a picture. The parts of the file: ITU-T T.81, B.1.1; JFIF
 * in APP0 and Adobe's APP14 are needed to read it.
 */
export function bare(jpeg: Uint8Array): Uint8Array {
  const parts = [jpeg.subarray(0, 2)];
  let at = 2;
  while (jpeg[at] === 0xff && jpeg[at + 1] !== 0xda) {
    const marker = jpeg[at + 1] as number;
    const end = at + 2 + (jpeg[at + 2] as number) * 256 + (jpeg[at + 3] as number);
    const said = String.fromCharCode(...jpeg.subarray(at + 4, at + 9));
    const needed = (marker === 0xe0 && said === "JFIF\0") || (marker === 0xee && said === "Adobe");
    const tells = marker === 0xfe || (marker >= 0xe0 && marker <= 0xef);
    if (needed || !tells) parts.push(jpeg.subarray(at, end));
    at = end;
  }
  parts.push(jpeg.subarray(at));
  const whole = new Uint8Array(parts.reduce((size, part) => size + part.length, 0));
  let to = 0;
  for (const part of parts) {
    whole.set(part, to);
    to += part.length;
  }
  return whole;
}

const encoded = (canvas: HTMLCanvasElement, quality: number) =>
  new Promise<Blob | null>((done) => canvas.toBlob(done, "image/jpeg", quality));

/**
 * The picture drawn anew: upright, its longest side 1600 pixels at most, without
 * what the camera wrote beside it. Fails where the file is no picture.
 */
export async function shrunk(file: Blob): Promise<Uint8Array> {
  const drawn = await createImageBitmap(file);
  const scale = Math.min(1, longest / Math.max(drawn.width, drawn.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(drawn.width * scale));
  canvas.height = Math.max(1, Math.round(drawn.height * scale));
  const brush = canvas.getContext("2d") as CanvasRenderingContext2D;
  brush.fillStyle = "#fff"; // under what lets light through
  brush.fillRect(0, 0, canvas.width, canvas.height);
  brush.drawImage(drawn, 0, 0, canvas.width, canvas.height);
  drawn.close();
  for (const quality of [0.8, 0.6, 0.4]) {
    const blob = await encoded(canvas, quality);
    const bytes = blob && bare(new Uint8Array(await blob.arrayBuffer()));
    if (bytes && bytes.length <= most) return bytes;
  }
  throw new Error("no picture");
}
