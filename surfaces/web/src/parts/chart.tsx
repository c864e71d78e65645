import { useEffect, useRef } from "preact/hooks";
import { useSettings, type Settings } from "../state/settings";

export type Draw = (width: number, settings: Settings) => Promise<Node[]>;

/** Holds a picture that is drawn to the width it gets, again when that changes. */
export function Chart(props: { draw: Draw; of: unknown; height: number; fixedWidth?: number | undefined }) {
  const host = useRef<HTMLDivElement>(null);
  const settings = useSettings();
  useEffect(() => {
    const element = host.current;
    if (!element) return;
    let drawn = 0;
    let current = true;
    const redraw = async (width: number) => {
      if (width === drawn || width < 1) return;
      drawn = width;
      const nodes = await props.draw(width, settings);
      if (current && width === drawn) {
        element.replaceChildren(...nodes);
        element.dataset.drawn = "yes";
      }
    };
    if (props.fixedWidth) {
      void redraw(props.fixedWidth);
      return () => {
        current = false;
      };
    }
    const watch = new ResizeObserver((entries) => void redraw(Math.floor(entries[0]?.contentRect.width ?? 0)));
    watch.observe(element);
    return () => {
      current = false;
      watch.disconnect();
    };
  }, [props.of, props.fixedWidth, settings]);
  return <div class="chart" ref={host} style={{ minHeight: `${props.height}px` }} />;
}
