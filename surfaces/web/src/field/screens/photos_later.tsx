import type { FunctionComponent } from "preact";
import { useEffect, useState } from "preact/hooks";
import { useField } from "../field";
import { Frame } from "../parts/frame";

/** The screen of photos comes only when it is asked for; it lies in the phone like the rest. */
export function PhotosLater({ of }: { of: string }) {
  const { words } = useField();
  const [Photos, setPhotos] = useState<FunctionComponent<{ of: string }>>();
  const [gone, setGone] = useState(false);
  useEffect(() => void import("../photos/screen").then((part) => setPhotos(() => part.Photos)).catch(() => setGone(true)), []);
  if (Photos) return <Photos of={of} />;
  return <Frame title={words.menu.photo} back>{gone && <p class="lead">{words.kept.offline}</p>}</Frame>;
}
