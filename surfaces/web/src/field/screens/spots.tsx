import { useState } from "preact/hooks";
import type { Session } from "../capture/session";
import { greenOf } from "../data/club";
import { go, useField } from "../field";
import { Frame, Keys } from "../parts/frame";

/** Another spot of this green, and which way goes first there. */
export function Spots() {
  const { acts, act, words, club, prefer } = useField();
  const session = acts.session() as Session;
  const green = club && greenOf(club, session.green);
  const [spot, setSpot] = useState(session.spot);
  const [first, setFirst] = useState(session.first);
  const spots = green?.spots.map((one) => one.id) ?? [];
  const take = async () => {
    prefer({ first });
    if (await act(() => acts.move(session, { spot, first, extra: undefined }))) go("visit");
  };
  return (
    <Frame title={words.menu.spots} back end={<button class="go" onClick={take}>{words.done}</button>}>
      <h2>{words.home.spot}</h2>
      <Keys of={spots.length > 0 ? spots : ["a", "b", "c"]} chosen={spot} text={String} name={words.home.spot} columns={3} choose={setSpot} />
      <h2>{words.home.firstWay}</h2>
      <Keys of={["out", "back"] as const} chosen={first} text={(way) => (way === "out" ? words.out : words.backWay)} name={words.home.firstWay} choose={setFirst} />
    </Frame>
  );
}
