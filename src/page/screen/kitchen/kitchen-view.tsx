/** Everything the kitchen holds, section by section. */
import type { JSX } from "preact";
import type { Readings } from "../../protocol.ts";
import type { Session } from "../session.ts";
import { BatchEntries } from "./batch-section.tsx";
import { CultureEntries } from "./culture-section.tsx";
import { NamedEntries } from "./named-section.tsx";
import { TestSection } from "./test-section.tsx";

interface KitchenViewProps {
  readonly session: Session;
  readonly readings: Readings;
  readonly onReadings: (readings: Readings) => void;
  readonly testOpen: boolean;
  readonly onTestOpen: (open: boolean) => void;
}

export const KitchenView = (props: KitchenViewProps): JSX.Element => {
  const { session, readings, onReadings, testOpen, onTestOpen } = props;
  return (
    <>
      <h1>My kitchen</h1>
      <p class="intro">
        Enter what you keep and what you heat it in, then a water test for each set-up. The report
        weighs all tests together and says what to use and what to change.
      </p>
      <CultureEntries session={session} />
      <NamedEntries session={session} section="appliance" />
      <NamedEntries session={session} section="container" />
      <NamedEntries session={session} section="thermometer" />
      <TestSection
        session={session}
        readings={readings}
        onReadings={onReadings}
        open={testOpen}
        onOpen={onTestOpen}
      />
      <BatchEntries session={session} />
    </>
  );
};
