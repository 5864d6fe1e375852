/** Which appliance, set to what, with which container. */
import type { Appliance, Kitchen } from "../../../kitchen/kitchen.ts";
import type { Entered, Field } from "../form/field-types.ts";
import { entryChoices, same } from "./choices.ts";

const settingField = ({ control, name }: Appliance): readonly Field[] => {
  const asked = { key: "setting", label: `${name} set to` } as const;
  if (control.kind === "fixed") return [];
  if (control.kind === "steps") {
    return [{ ...asked, kind: "text", hint: "a temperature such as 38", numeric: true }];
  }
  const positions = control.kind === "programs" ? control.programs : control.marks;
  return [{ ...asked, kind: "choice", choices: same(positions), none: null }];
};

export const setUpFields = (kitchen: Kitchen, entered: Entered): readonly Field[] => {
  const appliance = kitchen.appliances.find(({ id }) => id === entered["appliance"]);
  return [
    {
      kind: "choice",
      key: "appliance",
      label: "Appliance",
      choices: entryChoices(kitchen.appliances),
      none: null,
    },
    ...(appliance === undefined ? [] : settingField(appliance)),
    {
      kind: "choice",
      key: "container",
      label: "Container",
      choices: entryChoices(kitchen.containers),
      none: null,
    },
  ];
};
