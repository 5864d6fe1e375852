/** The screen: four views over one kitchen, and the one worker that does the work. */
import type { JSX } from "preact";
import { useEffect, useMemo, useState } from "preact/hooks";
import { problemText } from "../../problem.ts";
import type { Changed, KitchenState, Progress, Readings } from "../protocol.ts";
import { FilesView } from "./keep/files-view.tsx";
import { KitchenView } from "./kitchen/kitchen-view.tsx";
import { NightView } from "./night/night-view.tsx";
import { noReadings } from "./readings/readings-input.tsx";
import { Recovery } from "./recovery.tsx";
import { ReportView } from "./report/report-view.tsx";
import type { Session } from "./session.ts";
import type { WorkerClient } from "./start-worker.ts";
import { Working } from "./working.tsx";
import { About } from "./about.tsx";

const views = [
  ["night", "One night"],
  ["kitchen", "My kitchen"],
  ["report", "Report"],
  ["files", "Files"],
] as const;
type View = (typeof views)[number][0];

interface AppProps {
  readonly client: WorkerClient;
}

/** How many questions are open, and how far the newest one is. */
interface Work {
  readonly open: number;
  readonly progress: Progress | null;
}

/** What was told last; what stands on the screen anyway is only read out. */
interface Told {
  readonly texts: readonly string[];
  readonly seen: boolean;
}

const nothing: Told = { texts: [], seen: true };

export const App = ({ client }: AppProps): JSX.Element => {
  const [state, setState] = useState<KitchenState | null>(null);
  /** Why what was kept cannot be read. */
  const [unread, setUnread] = useState<string | null>(null);
  const [view, setView] = useState<View>("night");
  const [work, setWork] = useState<Work>({ open: 0, progress: null });
  const [told, setTold] = useState<Told>(nothing);
  const [readings, setReadings] = useState<Readings>(noReadings);
  const [testReadings, setTestReadings] = useState<Readings>(noReadings);
  const [testOpen, setTestOpen] = useState(false);

  const ask = useMemo<Session["ask"]>(
    () => async (name, asked) => {
      setWork(({ open }) => ({ open: open + 1, progress: null }));
      const outcome = await client.ask(name, asked, (progress) =>
        setWork(({ open }) => ({ open, progress })),
      );
      setWork(({ open }) => ({ open: open - 1, progress: null }));
      return outcome;
    },
    [client],
  );
  const tell = (text: string): void => setTold({ texts: [text], seen: true });
  const announce = (text: string): void => setTold({ texts: [text], seen: false });
  const begin = async (): Promise<void> => {
    const started = await ask("start", null);
    if (started.ok) setState(started.value);
    else setUnread(problemText(started.problem));
  };
  useEffect(() => void begin(), []);

  const take = (changed: Changed, first: string | null): void => {
    setState(changed.state);
    setTold({ texts: [...(first === null ? [] : [first]), ...changed.remarks], seen: true });
  };
  const go = (to: View): void => {
    setView(to);
    setTold(nothing);
    scrollTo({ top: 0 });
  };
  const keepNight = (): void => {
    setTestReadings(readings);
    setTestOpen(true);
    go("kitchen");
    setTimeout(() => document.getElementById("test-title")?.scrollIntoView(), 0);
  };
  const stop = (): void => {
    client.stop();
    void begin();
  };

  const session = { busy: work.open > 0, ask, take, tell, announce };
  return (
    <>
      <a class="skip" href="#main">
        To the page’s content
      </a>
      <div class="sheet page">
        <header class="masthead">
          <p class="brand">holdband</p>
          <p class="small">
            Reads a night of water and says which culture an appliance can hold. Nothing leaves this
            device.
          </p>
          <nav aria-label="Parts of this page">
            {views.map(([id, name]) => (
              <button
                key={id}
                type="button"
                class="tab"
                aria-current={view === id ? "page" : undefined}
                onClick={() => go(id)}
              >
                {name}
              </button>
            ))}
          </nav>
        </header>
        <Working
          open={work.open}
          progress={work.progress}
          onStop={state === null || state.notKept === null ? stop : null}
        />
        <div class={told.seen ? "told" : "heard"} role="status">
          {told.texts.map((text) => (
            <p key={text}>{text}</p>
          ))}
        </div>
        <main id="main" tabIndex={-1}>
          {state === null && unread !== null ? <Recovery session={session} why={unread} /> : null}
          {state === null ? null : (
            <Views
              session={{ state, ...session }}
              view={view}
              readings={readings}
              onReadings={setReadings}
              testReadings={testReadings}
              onTestReadings={setTestReadings}
              testOpen={testOpen}
              onTestOpen={setTestOpen}
              onKeep={keepNight}
            />
          )}
        </main>
        <About version={state?.version ?? ""} />
      </div>
    </>
  );
};

interface ViewsProps {
  readonly session: Session;
  readonly view: View;
  readonly readings: Readings;
  readonly onReadings: (readings: Readings) => void;
  readonly testReadings: Readings;
  readonly onTestReadings: (readings: Readings) => void;
  readonly testOpen: boolean;
  readonly onTestOpen: (open: boolean) => void;
  readonly onKeep: () => void;
}

/** All views stay, so that nothing entered is lost by looking elsewhere. */
const Views = (props: ViewsProps): JSX.Element => {
  const { session, view, readings, onReadings, onKeep } = props;
  return (
    <>
      <div hidden={view !== "night"}>
        <NightView session={session} readings={readings} onReadings={onReadings} onKeep={onKeep} />
      </div>
      <div hidden={view !== "kitchen"}>
        <KitchenView
          session={session}
          readings={props.testReadings}
          onReadings={props.onTestReadings}
          testOpen={props.testOpen}
          onTestOpen={props.onTestOpen}
        />
      </div>
      <div hidden={view !== "report"}>
        <ReportView session={session} open={view === "report"} />
      </div>
      <div hidden={view !== "files"}>
        <FilesView session={session} />
      </div>
    </>
  );
};
