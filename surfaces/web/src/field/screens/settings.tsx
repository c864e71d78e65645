import { clubIds, clubOf } from "../data/club";
import { useField } from "../field";
import { Frame, Keys } from "../parts/frame";
import { whereAmI } from "../phone";
import { languages, usualDecimal, type Language } from "../words";

const onOff = ["on", "off"] as const;

export function Settings(_: { of: string }) {
  const { book, words, prefs, prefer } = useField();
  const w = words.settings;
  const clubs = clubIds(book);
  const toggle = (title: string, on: boolean, choose: (on: boolean) => void, texts: Record<"on" | "off", string> = { on: w.on, off: w.off }) => (
    <section>
      <h2>{title}</h2>
      <Keys of={onOff} chosen={on ? "on" : "off"} text={(one) => texts[one]} name={title} choose={(one) => choose(one === "on")} />
    </section>
  );
  return (
    <Frame title={w.title} back>
      <section>
        <h2>{w.language}</h2>
        <Keys of={Object.keys(languages) as Language[]} chosen={prefs.language} text={(one) => <span lang={one}>{languages[one]}</span>} name={w.language} columns={2} choose={(language) => prefer({ language, decimal: usualDecimal(language) })} />
      </section>
      <div class="two">
        <section>
          <h2>{w.theme}</h2>
          <Keys of={["sun", "quiet"] as const} chosen={prefs.theme} text={(one) => w.themes[one]} name={w.theme} choose={(theme) => prefer({ theme })} />
        </section>
        <section>
          <h2>{w.hand}</h2>
          <Keys of={["left", "right"] as const} chosen={prefs.hand} text={(one) => w.hands[one]} name={w.hand} choose={(hand) => prefer({ hand })} />
        </section>
      </div>
      <div class="two unit">
        <section>
          <h2>{w.unit}</h2>
          <Keys of={["ft_in", "cm", "m"] as const} chosen={prefs.unit} text={(one) => w.units[one]} name={w.unit} choose={(unit) => prefer({ unit })} />
        </section>
        <section>
          <h2>{w.decimal}</h2>
          <Keys of={[".", ","] as const} chosen={prefs.decimal} text={(one) => `8${one}5`} name={w.decimal} choose={(decimal) => prefer({ decimal })} />
        </section>
      </div>
      {toggle(w.explicit, prefs.explicit, (explicit) => prefer({ explicit }), w.explicits)}
      <div class="two">
        {toggle(w.buzz, prefs.buzz, (buzz) => prefer({ buzz }))}
        {toggle(w.sound, prefs.sound, (sound) => prefer({ sound }))}
      </div>
      {toggle(w.nearest, prefs.nearest, (nearest) => {
        prefer({ nearest });
        if (nearest) void whereAmI(); // asks for leave now, not on the green
      })}
      <p class="quiet">{w.nearestText}</p>
      {clubs.length > 1 && (
        <section>
          <h2>{w.club}</h2>
          <Keys of={clubs} chosen={prefs.club} text={(id) => clubOf(book, id)?.club.club.name ?? id} name={w.club} columns={1} choose={(club) => prefer({ club, observer: "", green: "" })} />
        </section>
      )}
    </Frame>
  );
}
