import { useState } from "preact/hooks";
import { headline, type Definition, type Parameter, type WorkReview } from "../api/schemas";
import { Chart } from "../parts/chart";
import { elapsed } from "../parts/interval";
import { PhotosOf } from "../parts/photos";
import { Link } from "../parts/place";
import { FourDefinitions, WorkTable } from "../parts/work_table";
import { longDay, number } from "../state/format";
import { useSettings, type Settings } from "../state/settings";
import { greenTitle } from "../state/year";
import { words } from "../words";
import { Said } from "../parts/said";

const w = words.work;
const definitions = Object.keys(w.definitions) as Definition[];

export function parameterText(parameter: Parameter, settings: Settings): string {
  const value = parameter.number === undefined
    ? parameter.word.replace(/_/g, " ")
    : `${plain(parameter.number, settings)}\u00a0${parameter.unit}`.trim();
  return `${parameter.title}: ${value}`;
}

function plain(value: number, settings: Settings): string {
  const places = Math.min(3, (String(value).split(".")[1] ?? "").length);
  return number(value, places, settings);
}

export function WorkPage(props: { review: WorkReview }) {
  const { review } = props;
  const { work } = review;
  const settings = useSettings();
  const [definition, setDefinition] = useState<Definition>(headline);
  return (
    <article>
      <header class="page-head">
        <p class="over">
          <Link to={{ page: "works", club: review.club }}>{words.works.title}</Link>
        </p>
        <h1 tabIndex={-1}>
          {review.label}, {longDay(work.day)}
        </h1>
        <p class="lead"><Said text={review.sentence} /></p>
      </header>
      <PhotosOf club={review.club} of={work.id} />
      {review.work_class !== "disruptive" && <p class="notice">{w.noDisruption}</p>}
      {review.greens.length > 0 && (
        <>
          <Definitions value={definition} choose={setDefinition} />
          <Returns review={review} definition={definition} />
          <Pictures review={review} definition={definition} />
          <section>
            <h2>{w.table}</h2>
            <WorkTable review={review} definition={definition} />
            <p class="quiet">{w.lossBounds}</p>
          </section>
          <section>
            <h2>{w.four}</h2>
            {review.greens.map((green) => (
              <FourDefinitions key={green.loss.green + green.loss.half} club={review.club} green={green} />
            ))}
          </section>
        </>
      )}
      <section>
        <h2>{w.parameters}</h2>
        <ul class="plain-list">
          {work.parameters.map((parameter) => (
            <li key={parameter.name}>{parameterText(parameter, settings)}</li>
          ))}
          {work.note && <li>{work.note}</li>}
        </ul>
        <p class="quiet">
          {work.source.file ? words.records.line(work.source.file, work.source.line) : words.records.noSource}
        </p>
      </section>
    </article>
  );
}

function Definitions(props: { value: Definition; choose: (definition: Definition) => void }) {
  return (
    <fieldset class="definitions">
      <legend>{w.definition}</legend>
      {definitions.map((one) => (
        <label key={one}>
          <input type="radio" name="definition" value={one} checked={one === props.value} onChange={() => props.choose(one)} />
          <span>
            <strong>{w.definitions[one].name}</strong>
            <span class="quiet">{w.definitions[one].rule}</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}

function Returns(props: { review: WorkReview; definition: Definition }) {
  const { review, definition } = props;
  return (
    <section>
      <h2>{w.returns}</h2>
      <figure aria-label={w.returnsLabel}>
        <Chart
          of={`${review.work.id} ${definition}`}
          height={40 + review.greens.length * 24}
          draw={async (width) => (await import("../plots/returns")).drawReturns(review.greens, definition, width)}
        />
        <figcaption>
          {w.returnsText} {w.axis}
        </figcaption>
      </figure>
    </section>
  );
}

function Pictures(props: { review: WorkReview; definition: Definition }) {
  const { review, definition } = props;
  return (
    <section>
      <h2>{w.pictures}</h2>
      <p class="quiet">{w.picturesText}</p>
      <div class="multiples">
        {review.greens.map((green) => {
          const interval = green.loss.recovery.find((one) => one.definition === definition);
          return (
            <figure key={green.loss.green + green.loss.half} aria-label={w.pictureLabel(greenTitle(green))}>
              <figcaption>
                <strong>{greenTitle(green)}</strong>{" "}
                <span class="quiet">{green.loss.visits_after > 0 && interval ? elapsed(interval) : w.nothingAfter}</span>
              </figcaption>
              <Chart
                of={`${review.work.id} ${definition}`}
                height={190}
                draw={async (width, settings) => {
                  const { drawWork, workScale } = await import("../plots/work");
                  return drawWork(green, definition, workScale(review.greens), width, settings);
                }}
              />
            </figure>
          );
        })}
      </div>
    </section>
  );
}
