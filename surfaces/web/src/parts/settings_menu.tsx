import { useEffect, useRef } from "preact/hooks";
import type { DecimalMark, LengthUnit, Settings } from "../state/settings";
import { words } from "../words";

const w = words.settings;

export function SettingsMenu(props: { settings: Settings; choose: (settings: Settings) => void }) {
  const { settings, choose } = props;
  const menu = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    const close = (event: Event) => {
      const element = menu.current;
      if (!element?.open) return;
      if (event instanceof KeyboardEvent) {
        if (event.key !== "Escape") return;
        element.open = false;
        element.querySelector("summary")?.focus();
      } else if (!element.contains(event.target as Node)) {
        element.open = false;
      }
    };
    document.addEventListener("keydown", close);
    document.addEventListener("pointerdown", close);
    return () => {
      document.removeEventListener("keydown", close);
      document.removeEventListener("pointerdown", close);
    };
  }, []);
  return (
    <details class="settings" ref={menu}>
      <summary>{w.title}</summary>
      <div class="settings-box">
        <label>
          {w.unit}
          <select value={settings.unit} onChange={(event) => choose({ ...settings, unit: event.currentTarget.value as LengthUnit })}>
            {Object.entries(w.units).map(([value, text]) => (
              <option key={value} value={value}>
                {text}
              </option>
            ))}
          </select>
        </label>
        <label>
          {w.decimal}
          <select value={settings.decimal} onChange={(event) => choose({ ...settings, decimal: event.currentTarget.value as DecimalMark })}>
            {Object.entries(w.decimals).map(([value, text]) => (
              <option key={value} value={value}>
                {text}
              </option>
            ))}
          </select>
        </label>
      </div>
    </details>
  );
}
