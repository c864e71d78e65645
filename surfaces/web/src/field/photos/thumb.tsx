import { useEffect, useRef, useState } from "preact/hooks";
import { useField } from "../field";

const wide = 480;

/** A small picture: from this phone, or from the server where it is in reach. */
export function Thumb({ photo, club, text }: { photo: string; club: string; text: string }) {
  const { book } = useField();
  const canvas = useRef<HTMLCanvasElement>(null);
  const [held, setHeld] = useState(true);
  useEffect(() => {
    void book.picture(photo).then(async (picture) => {
      if (!picture) return setHeld(false);
      const drawn = await createImageBitmap(new Blob([picture.bytes], { type: "image/jpeg" }));
      const at = canvas.current;
      if (!at) return;
      const scale = Math.min(1, wide / drawn.width);
      at.width = Math.round(drawn.width * scale);
      at.height = Math.round(drawn.height * scale);
      at.getContext("2d")?.drawImage(drawn, 0, 0, at.width, at.height);
      drawn.close();
    }).catch(() => setHeld(false));
  }, [photo]);
  if (held) return <canvas ref={canvas} role="img" aria-label={text} />;
  return <img src={`/api/v1/clubs/${encodeURIComponent(club)}/photos/${photo}`} alt={text} loading="lazy" />;
}
