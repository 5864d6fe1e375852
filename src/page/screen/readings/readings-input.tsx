/** Where readings come from: files chosen or dropped, or lines typed by hand. */
import type { JSX } from "preact";
import { useState } from "preact/hooks";
import type { ChosenFile, Readings } from "../../protocol.ts";
import type { ShownProblem } from "../form/field-problem.ts";

interface ReadingsInputProps {
  readonly form: string;
  readonly readings: Readings;
  readonly onChange: (readings: Readings) => void;
  readonly problem: ShownProblem | null;
}

export const noReadings: Readings = { kind: "files", files: [] };

export const chosenFiles = (list: FileList | null): readonly ChosenFile[] =>
  [...(list ?? [])].map((file) => ({ name: file.name, content: file }));

const sizeText = (bytes: number): string => {
  if (bytes < 1000) return `${bytes} bytes`;
  return bytes < 1_000_000
    ? `${Math.round(bytes / 1000)} kB`
    : `${(bytes / 1_000_000).toFixed(1)} MB`;
};

const FileList = ({ files }: { readonly files: readonly ChosenFile[] }): JSX.Element | null =>
  files.length === 0 ? null : (
    <ul class="chosen">
      {files.map(({ name, content }) => (
        <li key={name}>
          {name} <span class="small">{sizeText(content.size)}</span>
        </li>
      ))}
    </ul>
  );

/** The keys under which mistakes of readings are shown here. */
type OwnKey = "files" | "lines";

const ownText = (problem: ShownProblem | null, key: OwnKey): string | null =>
  problem?.key === key ? problem.text : null;

const Mistake = ({ form, text, name }: { form: string; text: string | null; name: OwnKey }) =>
  text === null ? null : (
    <p class="mistake" role="alert" id={`${form}-${name}-problem`}>
      {text}
    </p>
  );

const described = (form: string, name: OwnKey, text: string | null) => ({
  "aria-describedby": `${form}-${name}-hint${text === null ? "" : ` ${form}-${name}-problem`}`,
  "aria-invalid": text === null ? undefined : (true as const),
});

const Drop = ({ form, readings, onChange, problem }: ReadingsInputProps): JSX.Element => {
  const [over, setOver] = useState(false);
  const files = readings.kind === "files" ? readings.files : [];
  const mistake = ownText(problem, "files");
  const take = (list: FileList | null): void => {
    const chosen = chosenFiles(list);
    if (chosen.length > 0) onChange({ kind: "files", files: chosen });
  };
  return (
    <div
      class={over ? "drop over" : "drop"}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        take(event.dataTransfer?.files ?? null);
      }}
    >
      <label for={`${form}-files`}>The logger’s files</label>
      <p class="hint" id={`${form}-files-hint`}>
        Drop them here or choose them: CSV or text, as the logger wrote them. Several that ran
        together may be chosen at once.
      </p>
      <input
        id={`${form}-files`}
        type="file"
        multiple
        {...described(form, "files", mistake)}
        onChange={(event) => take(event.currentTarget.files)}
      />
      <FileList files={files} />
      <Mistake form={form} text={mistake} name="files" />
    </div>
  );
};

const Lines = ({ form, readings, onChange, problem }: ReadingsInputProps): JSX.Element => {
  const mistake = ownText(problem, "lines");
  return (
    <div class="field">
      <label for={`${form}-lines`}>Readings, one on each line</label>
      <p class="hint" id={`${form}-lines-hint`}>
        The time and what the thermometer showed: <kbd>22:30 41.2</kbd>. With several thermometers a
        number for each: <kbd>22:30 41.2 39.8</kbd>, or - where one was not read.
      </p>
      <textarea
        id={`${form}-lines`}
        rows={8}
        spellcheck={false}
        {...described(form, "lines", mistake)}
        value={readings.kind === "typed" ? readings.lines : ""}
        onInput={(event) => onChange({ kind: "typed", lines: event.currentTarget.value })}
      />
      <Mistake form={form} text={mistake} name="lines" />
    </div>
  );
};

export const ReadingsInput = (props: ReadingsInputProps): JSX.Element => {
  const { form, readings, onChange } = props;
  const choose = (kind: Readings["kind"]): void =>
    onChange(kind === "files" ? noReadings : { kind: "typed", lines: "" });
  return (
    <fieldset class="group readings">
      <legend>The readings</legend>
      <div class="ticks">
        {(["files", "typed"] as const).map((kind) => (
          <label class="tick" key={kind}>
            <input
              type="radio"
              name={`${form}-readings`}
              checked={readings.kind === kind}
              onChange={() => choose(kind)}
            />
            <span>{kind === "files" ? "from a logger" : "typed by hand"}</span>
          </label>
        ))}
      </div>
      {readings.kind === "files" ? <Drop {...props} /> : <Lines {...props} />}
    </fieldset>
  );
};
