/** JupyterLab's own renderer of outputs in a page of its own; bundled by the test. */
import { MimeModel, RenderMimeRegistry, standardRendererFactories } from "@jupyterlab/rendermime";
import { Widget } from "@lumino/widgets";

const registry = new RenderMimeRegistry({ initialFactories: standardRendererFactories });

/** Shows outputs one after the other, as JupyterLab's output area does. */
async function renderAll(outputs: readonly string[], trusted: boolean): Promise<void> {
  for (const html of outputs) {
    const renderer = registry.createRenderer("text/html");
    await renderer.renderModel(new MimeModel({ data: { "text/html": html }, trusted }));
    const area = document.createElement("div");
    document.body.append(area);
    Widget.attach(renderer, area);
  }
}

Object.assign(globalThis, { renderAll });
