import type { Plugin } from "vite";
import type { OutputAsset, OutputBundle, OutputChunk } from "rollup";

const isChunk = (part: OutputBundle[string]): part is OutputChunk => part.type === "chunk";

/** Puts a page's script and style inside the page, so that one file is enough. */
export function oneFile(): Plugin {
  return {
    name: "baize-one-file",
    enforce: "post",
    generateBundle: {
      // After Vite has put its last word into the chunks.
      order: "post",
      handler(_options, bundle) {
        const parts = Object.entries(bundle);
        for (const [name, part] of parts) {
          if (!name.endsWith(".html")) continue;
          const page = part as OutputAsset;
          page.source = inlined(String(page.source), bundle);
        }
        for (const [name] of parts) {
          if (!name.endsWith(".html")) delete bundle[name];
        }
      },
    },
  };
}

function inlined(html: string, bundle: OutputBundle): string {
  const part = (path: string) => {
    const found = bundle[path.replace(/^\.?\//, "")];
    if (!found) throw new Error(`The page names ${path}, which was not built.`);
    return found;
  };
  let script = "";
  const page = html
    .replace(/<link rel="stylesheet"[^>]*href="([^"]+)"[^>]*>/g, (_, path: string) => {
      const style = String((part(path) as OutputAsset).source);
      return `<style>${style}</style>`;
    })
    .replace(/<script type="module"[^>]*src="([^"]+)"[^>]*><\/script>/g, (_, path: string) => {
      const chunk = part(path);
      // "</script" inside a string would end the element.
      script += isChunk(chunk) ? chunk.code.replace(/<\/script/gi, "<\\/script") : "";
      return "";
    });
  return page.replace("</body>", () => `<script type="module">${script}</script></body>`);
}
