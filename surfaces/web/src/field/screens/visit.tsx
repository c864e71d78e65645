import type { Session } from "../capture/session";
import { stepOf } from "../capture/step";
import { useField } from "../field";
import { Broken } from "./broken";
import { Distances } from "./distances";
import { Rolling } from "./rolling";
import { Stand } from "./stand";
import { SpeedOnly } from "./speed_only";
import { TotalOnly } from "./total_only";

/** The visit at work: whatever comes next. */
export function Visit({ session }: { session: Session }) {
  const { acts, live } = useField();
  const seen = acts.seen(session);
  const step = stepOf(seen);
  switch (step.at) {
    case "rolling":
      return live.current?.ball === step.ball.thing
        ? <Rolling session={session} ball={step.ball} released={live.current.released} />
        : <Broken session={session} seen={seen} ball={step.ball} />;
    case "distances":
      return <Distances session={session} seen={seen} ball={step.ball} direction={step.direction} />;
    case "total":
      return <TotalOnly session={session} seen={seen} direction={step.direction} />;
    case "distance":
      return <SpeedOnly session={session} seen={seen} direction={step.direction} order={step.order} />;
    default:
      return <Stand session={session} seen={seen} step={step} />;
  }
}
