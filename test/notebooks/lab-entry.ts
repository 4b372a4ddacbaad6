import { MimeModel, RenderMimeRegistry, standardRendererFactories } from "@jupyterlab/rendermime";
import { Widget } from "@lumino/widgets";
const registry = new RenderMimeRegistry({ initialFactories: standardRendererFactories });
Object.assign(globalThis, {
  async renderOutput(data: any, trusted: boolean) {
    const renderer = registry.createRenderer("text/html");
    await renderer.renderModel(new MimeModel({ data, trusted }));
    const area = document.createElement("div");
    area.className = "jp-OutputArea-output";
    document.body.append(area);
    Widget.attach(renderer, area);
  },
});
