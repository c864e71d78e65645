import { useEffect, useState } from "preact/hooks";
import { api } from "../api/client";
import type { Photo } from "../api/schemas";
import { timeOfDay } from "../state/format";
import { photoWords as w } from "../words_photos";

const address = (club: string, photo: string) =>
  new URL(`api/v1/clubs/${encodeURIComponent(club)}/photos/${photo}`, document.baseURI).href;

/** One picture, small; a touch opens the whole of it. */
export function PhotoFigure(props: { club: string; photo: Photo; children?: preact.ComponentChildren }) {
  const { club, photo } = props;
  const time = timeOfDay(photo.taken);
  return (
    <figure class="photo">
      {photo.here ? (
        <a href={address(club, photo.photo)} target="_blank" rel="noopener">
          <img src={address(club, photo.photo)} alt={w.of(time, photo.note)} loading="lazy" />
        </a>
      ) : (
        <p class="photo-waiting quiet">{w.waiting}</p>
      )}
      <figcaption>
        <strong>{time}</strong> {photo.by}
        {photo.note && <span class="photo-line">{photo.note}</span>}
        {props.children && <span class="photo-line">{props.children}</span>}
      </figcaption>
    </figure>
  );
}

/** The photos of a visit or a work; nothing where there are none. */
export function PhotosOf({ club, of }: { club: string; of: string }) {
  const [photos, setPhotos] = useState<Photo[]>([]);
  const [failed, setFailed] = useState("");
  useEffect(() => {
    let current = true;
    api.photos(club, of).then(
      (all) => current && setPhotos(all),
      (problem: Error) => current && setFailed(problem.message),
    );
    return () => {
      current = false;
    };
  }, [club, of]);
  if (failed) return <p class="notice">{failed}</p>;
  if (photos.length === 0) return null;
  return (
    <section>
      <h2>{w.title}</h2>
      <div class="photos">{photos.map((photo) => <PhotoFigure key={photo.photo} club={club} photo={photo} />)}</div>
    </section>
  );
}
