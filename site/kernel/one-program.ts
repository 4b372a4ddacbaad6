/**
 * TypeScript as tslab's converter asks for it, without the watching of files. tslab makes a program twice
 * for each cell, the first time only to learn its names, and works out each time which file needs which.
 * Here a cell's names come from its own text, and one program is made for it, with the files and the
 * places of modules that were found before; what a cell becomes is the same.
 */
import type * as TypeScript from "@tslab/typescript-for-tslab";

type Options = TypeScript.CompilerOptions;
type SourceFile = TypeScript.SourceFile;

/** A file whose names are known. */
type Bound = { readonly locals?: Iterable<[string, TypeScript.Symbol]> };

/** With what TypeScript has beside its published types. */
export type Ts = typeof TypeScript & {
  bindSourceFile(file: SourceFile, options: Options): void;
  createCompilerHostWorker(
    options: Options,
    setParentNodes: boolean,
    system: TypeScript.System,
  ): TypeScript.CompilerHost;
};

/** Neither the library's types nor the language's own. */
const withoutTypes: Options = { noResolve: true, noLib: true, types: [], declaration: false };

/** What the converter asks of the program of a cell. */
interface Builder {
  getSourceFile(name: string): SourceFile | undefined;
  getProgram(): TypeScript.Program;
  getAllDependencies(file: SourceFile): string[];
  readonly emit: TypeScript.Program["emit"];
}

/** What the converter says of its files, and where it takes a program. */
interface WatchHost {
  readonly rootFiles: readonly string[];
  readonly options: Options;
  readonly system: TypeScript.System;
  afterProgramCreate?: (builder: Builder) => void;
}

/** Asks once for each name, since no file changes while a kernel runs. */
function once<Found, More extends unknown[]>(
  ask: (name: string, ...more: More) => Found,
): (name: string, ...more: More) => Found {
  const known = new Map<string, Found>();
  return (name, ...more) => {
    if (!known.has(name)) known.set(name, ask(name, ...more));
    return known.get(name) as Found;
  };
}

/** A compiler's host that reads each file and looks for each module once. */
function rememberingHost(ts: Ts, { options, system }: WatchHost): TypeScript.CompilerHost {
  const host = ts.createCompilerHostWorker(options, false, system);
  const places = ts.createModuleResolutionCache(
    system.getCurrentDirectory(),
    host.getCanonicalFileName,
    options,
  );
  return Object.assign(host, {
    getSourceFile: once(host.getSourceFile),
    fileExists: once((name) => system.fileExists(name)),
    directoryExists: once((name) => system.directoryExists(name)),
    getDirectories: once((name) => system.getDirectories(name)),
    realpath: once((name) => system.realpath?.(name) ?? name),
    resolveModuleNameLiterals: (literals: readonly { text: string }[], from: string) =>
      literals.map(({ text }) => ts.resolveModuleName(text, from, options, host, places)),
  });
}

/** The names of a cell's values, which later cells find in what it exports. */
const declared = (ts: Ts, file: SourceFile): string =>
  [...((file as Bound).locals ?? [])]
    .filter(([, { flags }]) => flags & (ts.SymbolFlags.Value | ts.SymbolFlags.Alias))
    .map(([name]) => `declare let ${name}: any;\n`)
    .join("");

/** Makes the program of each cell on that of the cell before it. */
function programs(ts: Ts, { rootFiles, options, system }: WatchHost) {
  const host = rememberingHost(ts, { rootFiles, options, system });
  const { getSourceFile } = host;
  let last: TypeScript.Program | undefined;

  /** The files that the converter writes, with the names in them known. */
  const written = (): Map<string, SourceFile> =>
    new Map(
      rootFiles.map((name) => {
        const text = system.readFile(name) ?? "";
        const file = ts.createSourceFile(name, text, options.target ?? ts.ScriptTarget.ES2022);
        ts.bindSourceFile(file, options);
        return [name, file];
      }),
    );

  return (): Builder => {
    const files = written();
    let program: TypeScript.Program | undefined;
    const made = () => {
      host.getSourceFile = (name, ...how) => files.get(name) ?? getSourceFile(name, ...how);
      program ??= ts.createProgram({
        rootNames: rootFiles,
        options,
        host,
        ...(last && { oldProgram: last }),
      });
      last = program;
      return program;
    };
    const isSource = ({ isDeclarationFile, fileName }: SourceFile) =>
      !isDeclarationFile && /\.[jt]s$/.test(fileName);
    return {
      getSourceFile: (name) => files.get(name) ?? made().getSourceFile(name),
      getProgram: made,
      getAllDependencies: () =>
        made()
          .getSourceFiles()
          .filter(isSource)
          .map(({ fileName }) => fileName),
      emit: (file, write, ...how) => {
        if (!options.declaration && file)
          write?.("outDir/__tslab__.d.ts", declared(ts, file), false);
        return made().emit(file, write, ...how);
      },
    };
  };
}

const AWAIT_OUTSIDE = 1308; // tslab knows an await at the top of a cell by it

/** Faults of a cell's form alone, for one whose types were checked before. */
const faultsOfForm = (program: TypeScript.Program, files: readonly SourceFile[]) =>
  files.flatMap((file) => [
    ...program.getSyntacticDiagnostics(file),
    ...program.getSemanticDiagnostics(file).filter(({ code }) => code === AWAIT_OUTSIDE),
  ]);

/**
 * TypeScript whose watched program is made anew when the converter says that its files changed.
 *
 * @param typesChecked - the cells' types need no look: they were checked before, all cells at once
 */
export function withOneProgram(ts: Ts, typesChecked: boolean): Ts {
  const watchHost = (rootFiles: string[], options: Options, system: TypeScript.System) => ({
    rootFiles,
    options: typesChecked ? { ...options, ...withoutTypes } : options,
    system,
  });
  const watch = (host: WatchHost) => {
    const { rootFiles, system } = host;
    const next = programs(ts, host);
    const make = () => host.afterProgramCreate?.(next());
    let waiting: unknown;
    const changed = () => {
      if (waiting !== undefined) system.clearTimeout?.(waiting);
      waiting = system.setTimeout?.(() => {
        waiting = undefined;
        make();
      }, 0);
    };
    for (const file of rootFiles) system.watchFile?.(file, changed);
    make();
    const updateRootFileNames = (): never => {
      throw new Error("a cell may not be a module with a name");
    };
    return { close() {}, updateRootFileNames };
  };
  const own = { createWatchCompilerHost: watchHost, createWatchProgram: watch };
  const faults = typesChecked ? { getPreEmitDiagnosticsOfFiles: faultsOfForm } : {};
  return { ...ts, ...own, ...faults } as unknown as Ts;
}
