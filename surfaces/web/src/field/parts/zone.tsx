import type { ComponentChildren } from "preact";

let lastDown = -Infinity;
addEventListener("pointerdown", (event) => (lastDown = event.timeStamp), { capture: true });

/** A button that answers to the finger coming down, and to keyboards and screen readers. */
export function useDown(press: (time: number, y: number) => void) {
  return {
    onPointerDown(event: PointerEvent) {
      if (!event.isPrimary || event.button !== 0) return;
      press(event.timeStamp, event.clientY);
    },
    onTouchStart(event: TouchEvent) {
      // The screen changes under the finger; its click must not land on what comes next.
      event.preventDefault();
    },
    onClick(event: MouseEvent) {
      // A click that follows a finger: its coming down has been answered, here
      // or on the screen that stood here before.
      if (event.timeStamp - lastDown < 1000) return;
      const box = (event.currentTarget as HTMLElement).getBoundingClientRect();
      press(event.timeStamp, box.top + box.height / 2);
    },
  };
}

/** The great button at the thumb, pressed as the ball leaves the ramp. */
export function Release(props: { press: (time: number) => void; children: ComponentChildren }) {
  return (
    <button class="go release" {...useDown(props.press)}>
      {props.children}
    </button>
  );
}
