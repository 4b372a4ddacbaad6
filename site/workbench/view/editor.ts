import { defaultKeymap, history, historyKeymap } from "@codemirror/commands";
import { typescriptLanguage } from "@codemirror/lang-javascript";
import {
  bracketMatching,
  HighlightStyle,
  indentOnInput,
  syntaxHighlighting,
} from "@codemirror/language";
import { setDiagnostics } from "@codemirror/lint";
import { EditorState, type Extension } from "@codemirror/state";
import { drawSelection, EditorView, keymap, lineNumbers } from "@codemirror/view";
import { tags } from "@lezer/highlight";
import { element } from "@rollbook/page";

/** One cell's text in an editor of its own. */
export interface Editor {
  readonly host: HTMLElement;
  text(): string;
  replace(text: string): void;
  /** Underlines a line, counted from 1; without one, takes the mark away. */
  mark(line?: number, message?: string): void;
  focus(): void;
}

interface Options {
  readonly label: string;
  readonly text: string;
  readonly changed: () => void;
  readonly run: () => void;
}

const look = EditorView.theme({
  "&": { background: "var(--card)", color: "var(--ink)", fontSize: "0.9rem" },
  "&.cm-focused": { outline: "3px solid var(--link)", outlineOffset: "2px" },
  ".cm-scroller": { fontFamily: "ui-monospace, monospace", lineHeight: "1.45" },
  ".cm-content": { caretColor: "var(--ink)" },
  ".cm-cursor": { borderLeftColor: "var(--ink)" },
  ".cm-gutters": { background: "var(--paper)", color: "var(--quiet)", border: "none" },
  "&.cm-focused .cm-selectionBackground, .cm-selectionBackground": {
    background: "color-mix(in srgb, var(--link) 30%, transparent) !important",
  },
  ".cm-matchingBracket": { background: "var(--mark) !important" },
  ".cm-tooltip": {
    background: "var(--card)",
    color: "var(--ink)",
    border: "1px solid var(--rule)",
  },
});

const colours = HighlightStyle.define([
  { tag: tags.keyword, color: "var(--tone-outside)" },
  { tag: [tags.string, tags.special(tags.string)], color: "var(--tone-rear)" },
  { tag: tags.number, color: "var(--tone-accent)" },
  { tag: tags.comment, color: "var(--quiet)", fontStyle: "italic" },
  { tag: [tags.typeName, tags.className], color: "var(--tone-front)" },
]);

function extensions({ label, changed, run }: Options): Extension[] {
  const runs = () => {
    run();
    return true;
  };
  return [
    lineNumbers(),
    history(),
    drawSelection(),
    indentOnInput(),
    bracketMatching(),
    typescriptLanguage,
    syntaxHighlighting(colours),
    keymap.of([{ key: "Mod-Enter", run: runs }, ...defaultKeymap, ...historyKeymap]),
    EditorView.contentAttributes.of({ "aria-label": label, tabindex: "0" }),
    EditorView.updateListener.of(({ docChanged }) => {
      if (docChanged) changed();
    }),
    look,
  ];
}

/** An editor in a shadow root: there its styles are objects, which a strict policy lets pass. */
export function editor(options: Options): Editor {
  const host = element("div", { class: "editor" });
  const root = host.attachShadow({ mode: "open" });
  const state = EditorState.create({ doc: options.text, extensions: extensions(options) });
  const view = new EditorView({ state, root, parent: root });
  return {
    host,
    text: () => view.state.doc.toString(),
    replace(text) {
      view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: text } });
    },
    mark(line, message = "") {
      const { doc } = view.state;
      const at = line === undefined ? undefined : doc.line(Math.min(Math.max(line, 1), doc.lines));
      const marks = at ? [{ from: at.from, to: at.to, severity: "error" as const, message }] : [];
      view.dispatch(setDiagnostics(view.state, marks));
    },
    focus: () => view.focus(),
  };
}
