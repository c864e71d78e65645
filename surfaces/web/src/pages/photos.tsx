import type { GreensReview, Photo } from "../api/schemas";
import { PhotoFigure } from "../parts/photos";
import { Link } from "../parts/place";
import { longDay } from "../state/format";
import { words } from "../words";
import { photoWords as w } from "../words_photos";

/** Every photo of the club, the newest day first; also those of a visit without a roll. */
export function PhotosPage(props: { club: string; photos: Photo[]; review: GreensReview }) {
  const { club, photos } = props;
  const days = [...new Set(photos.map((photo) => photo.day))].sort().reverse();
  const name = (green: string) => props.review.greens.find((card) => card.green === green)?.name ?? green;
  return (
    <article>
      <header class="page-head">
        <p class="over"><Link to={{ page: "records", club }}>{words.visit.back}</Link></p>
        <h1 tabIndex={-1}>{w.title}</h1>
        <p class="lead">{photos.length > 0 ? w.intro(photos.length) : w.none}</p>
      </header>
      {days.map((day) => (
        <section key={day}>
          <h2>{longDay(day)}</h2>
          <div class="photos">
            {photos.filter((photo) => photo.day === day).map((photo) => (
              <PhotoFigure key={photo.photo} club={club} photo={photo}>
                {photo.green && <span>{name(photo.green)} </span>}
                {photo.work && <Link to={{ page: "work", club, work: photo.work }}>{w.work}</Link>}
                {photo.visit && photo.green && <Link to={{ page: "records", club, green: photo.green, from: day, to: day }}>{w.visit}</Link>}
              </PhotoFigure>
            ))}
          </div>
        </section>
      ))}
    </article>
  );
}
