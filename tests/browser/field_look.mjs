// What a screen must keep to, read from what the browser drew.

/** Letters that are small or faint, one line each: 16 px, and 7 to 1 (WCAG 2.2, 1.4.6, and its formula of contrast). */
export const faint = (page) =>
  page.evaluate(() => {
    const numbers = (colour) => (colour.match(/[\d.]+/g) ?? []).map(Number);
    const light = (value) => (value / 255 <= 0.04045 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4);
    const luminance = ([red, green, blue]) => 0.2126 * light(red) + 0.7152 * light(green) + 0.0722 * light(blue);
    const ground = (element) => {
      for (let at = element; at; at = at.parentElement) {
        const [red, green, blue, alpha = 1] = numbers(getComputedStyle(at).backgroundColor);
        if (alpha === 1) return [red, green, blue];
      }
      return [255, 255, 255];
    };
    const found = [];
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = texts.nextNode(); text; text = texts.nextNode()) {
      const element = text.parentElement;
      if (!text.data.trim() || element.closest(".unseen, noscript, script, style, option") || element.getClientRects().length === 0) continue;
      const style = getComputedStyle(element);
      const size = Number.parseFloat(style.fontSize);
      const off = element.closest(":disabled");
      const [a, b] = [luminance(numbers(style.color)), luminance(ground(element))].sort((one, other) => other - one);
      const contrast = (a + 0.05) / (b + 0.05);
      const said = `"${text.data.trim().slice(0, 24)}"`;
      if (size < 15.99) found.push(`${said}: ${size} px`);
      if (!off && contrast < 7) found.push(`${said}: ${contrast.toFixed(2)} to 1`);
    }
    return [...new Set(found)];
  });

/** What does not fit: wider than the screen, or words that a key cuts off. */
export const cutOff = (page) =>
  page.evaluate(() => {
    const found = [];
    const column = document.querySelector(".column");
    const over = Math.max(document.documentElement.scrollWidth - innerWidth, column ? column.scrollWidth - column.clientWidth : 0);
    if (over > 0) found.push(`${over} px over the edge`);
    for (const element of document.querySelectorAll("button, a, h1, .cell, .go, output, label")) {
      const box = element.getBoundingClientRect();
      if (box.width === 0 || element.closest(".unseen")) continue;
      const said = element.textContent.trim().slice(0, 24);
      if (box.left < -1 || box.right > innerWidth + 1) found.push(`"${said}" beside the screen`);
      const texts = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
      for (let text = texts.nextNode(); text; text = texts.nextNode()) {
        if (!text.data.trim() || text.parentElement.closest(".unseen, .toast, select")) continue;
        const words = document.createRange();
        words.selectNodeContents(text);
        const drawn = words.getBoundingClientRect();
        if (drawn.width === 0) continue;
        // A letter's own height is more than that of a tight line.
        const loose = 0.2 * Number.parseFloat(getComputedStyle(text.parentElement).fontSize);
        const inside = drawn.right <= box.right + 1 && drawn.left >= box.left - 1 && drawn.bottom <= box.bottom + loose && drawn.top >= box.top - loose;
        if (!inside) found.push(`"${text.data}" over its border`);
        const shown = text.parentElement.getBoundingClientRect();
        if (drawn.height > 0 && shown.height < drawn.height / 2 && getComputedStyle(text.parentElement).overflow === "hidden") found.push(`"${text.data}" hidden`);
      }
    }
    const go = document.querySelector(".thumb .go");
    if (go && go.getBoundingClientRect().bottom > innerHeight + 1) found.push("the great button is below the screen");
    return found;
  });

/** Whatever a finger may touch and that is smaller than 56 px. */
export const small = (page) =>
  page.evaluate(() =>
    [...document.querySelectorAll("button, a, input, select, textarea")]
      .map((element) => ({ element, box: element.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && (box.width < 55.5 || box.height < 55.5))
      .map(({ element, box }) => `${element.textContent} ${box.width} x ${box.height}`),
  );
