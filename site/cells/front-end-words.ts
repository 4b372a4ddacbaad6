/** What is said in a Jupyter front end alone, apart from the words that pages need too. */
export const frontEndWords = {
  allStill:
    "The figures and questions of this notebook stand still. To bring them to life, trust it: File › Trust Notebook in Jupyter, the command “Trust Notebook” in JupyterLab, trust in the workspace in VS Code.",
  stillHere: "Still here: it moves once the notebook is trusted and its first cell has run.",
  stillBecause: (reason: string) => `This stands still: ${reason}`,
  otherHere:
    "run again here, its cells say something else. They may read a file, a clock or chance.",
  notHere: (name: string) =>
    `a cell takes ${name} from outside; here it finds @rollbook/lib and @rollbook/cells alone.`,
  keptNowhere: "This front end keeps nothing: what you file is gone once the notebook is closed.",
  showCell: "Show the cell",
  hideCell: "Hide the cell",
} as const;
