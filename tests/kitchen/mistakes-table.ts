/**
 * Typical mistakes and the exact sentences about them. The files are
 * constructed; each sentence was read and found right before it went in here.
 */
export const mistakesTable: readonly (readonly [
  name: string,
  text: string,
  sentences: readonly string[],
])[] = [
  [
    "empty file",
    "",
    [
      "- Line 1: expected a kitchen, found an empty file; write for example holdband: 1 on the first line.",
    ],
  ],
  [
    "only a mark",
    "﻿",
    [
      "- Line 1: expected a kitchen, found an empty file; write for example holdband: 1 on the first line.",
    ],
  ],
  [
    "only comments",
    "# my kitchen\n",
    [
      "- Line 1: expected a kitchen, found an empty file; write for example holdband: 1 on the first line.",
    ],
  ],
  [
    "a list",
    "- a\n- b\n",
    [
      "- Line 1: expected a kitchen's sections, found something else; write for example holdband: 1 on the first line.",
    ],
  ],
  [
    "a sentence",
    "hello\n",
    [
      "- Line 1: expected a kitchen's sections, found something else; write for example holdband: 1 on the first line.",
    ],
  ],
  [
    "no version",
    "unit: C\n",
    [
      "- Line 1, holdband: expected version 1 of this form (a newer one needs a newer holdband), found nothing; write for example holdband: 1.",
    ],
  ],
  [
    "a later version",
    "holdband: 2\n",
    [
      '- Line 1, holdband: expected version 1 of this form (a newer one needs a newer holdband), found "2"; write for example holdband: 1.',
    ],
  ],
  [
    "a tab",
    "holdband: 1\nappliances:\n\tbox:\n",
    ["- Line 3: expected spaces before the line, two for each layer, found a tab."],
  ],
  [
    "a tab, and what follows from it",
    "holdband: 1\nappliances:\n  box:\n\tkind: cooker\n    steps: 30..45 by 1\n",
    ["- Line 4: expected spaces before the line, two for each layer, found a tab."],
  ],
  [
    "a line set in too little",
    "holdband: 1\nappliances:\n  box:\n  kind: cooker\n    thermostat: yes\n",
    [
      '- Line 4: expected the lines of one group to begin in the same column, found "kind: cooker"; write for example two spaces before each of them.',
    ],
  ],
  [
    "uneven columns",
    "holdband: 1\nappliances:\n  box:\n    kind: cooker\n   name: Box\n",
    [
      '- Line 5: expected the lines of one group to begin in the same column, found "name: Box"; write for example two spaces before each of them.',
    ],
  ],
  [
    "a key twice",
    "holdband: 1\nunit: C\nunit: F\n",
    ["- Line 3, unit: expected each key once, found it a second time."],
  ],
  [
    "a colon inside a name",
    "holdband: 1\nappliances:\n  box:\n    name: Box: the big one\n",
    [
      '- Line 4: expected one "key: value" to a line, found "name: Box: the big one"; write for example name: "Cooker: the big one", in quotes.',
    ],
  ],
  [
    "no space behind the colon",
    "holdband: 1\nunit:C\nroom: 17..24\n",
    [
      '- Line 2: expected a key, a colon, a space and a value ("key: value"), found "unit:C"; write for example room: 17..24.',
    ],
  ],
  [
    "an open bracket",
    "holdband: 1\nappliances:\n  box:\n    marks: [1, 2\n    kind: cooker\n",
    [
      '- Line 5: expected brackets that open and close, inside their own lines, found "kind: cooker"; write for example marks: [1, 2, 3].',
    ],
  ],
  [
    "an open quote",
    "holdband: 1\nappliances:\n  box:\n    name: 'Box\n",
    [
      '- Line 5: expected a closing quote, found the end of the file; write for example name: "Pen", with both quotes on one line.',
    ],
  ],
  [
    "a backslash",
    'holdband: 1\nappliances:\n  box:\n    name: "C:\\kitchen"\n',
    [
      '- Line 4: expected no backslash in double quotes, found "name: "C:\\kitchen""; write for example name: \'Box\', in single quotes.',
    ],
  ],
  [
    "an at sign",
    "holdband: 1\nappliances:\n  box:\n    name: @home\n",
    [
      '- Line 4: expected a value in quotes, as it begins with a sign, found "name: @home"; write for example name: "Cooker: the big one", in quotes.',
    ],
  ],
  [
    "two documents",
    "holdband: 1\n---\nholdband: 1\n",
    ['- Line 2: expected one kitchen in the file, found "---".'],
  ],
  [
    "an alias",
    "holdband: 1\nroom: &r 17..24\nunit: *r\n",
    [
      "- Line 2, room: expected the value written out, in quotes where it begins with & or *, found an anchor or alias, which is not used here.",
      "- Line 3, unit: expected the value written out, in quotes where it begins with & or *, found an anchor or alias, which is not used here.",
    ],
  ],
  [
    "a tag",
    "holdband: 1\nunit: !x C\n",
    ['- Line 2: expected the value alone, in quotes where it begins with !, found "unit: !x C".'],
  ],
  [
    "the key __proto__",
    "holdband: 1\n__proto__:\n  unit: F\n",
    ['- Line 2, __proto__: expected a name of yours, found "__proto__".'],
  ],
  [
    "a directive",
    "%YAML 1.1\n---\nholdband: 1\n",
    ["- Line 1: expected the kitchen's sections, found a line that begins with %."],
  ],
  [
    "a mistyped section",
    "holdband: 1\naplliances:\n  box:\n    control: fixed\ncontainers:\n  jars:\n    stands: jars in water\ntests:\n  one:\n    appliance: box\n    container: jars\n    files:\n      - file: readings/a.csv\n        sha256: abababababababababababababababababababababababababababababababab\n",
    [
      '- Line 2, aplliances: expected one of the keys holdband, unit, altitude, room, thermometers, appliances, containers, cultures, tests, batches, found "aplliances"; did you mean "appliances"?',
    ],
  ],
  [
    "a mistyped key",
    "holdband: 1\nappliances:\n  box:\n    knid: cooker\n",
    [
      '- Line 4, appliances > box > knid: expected one of the keys name, kind, control, programs, steps, marks, thermostat, moved, found "knid"; did you mean "kind"?',
    ],
  ],
  [
    "a key of prototypes",
    "holdband: 1\nappliances:\n  box:\n    constructor: x\n",
    [
      '- Line 4, appliances > box > constructor: expected one of the keys name, kind, control, programs, steps, marks, thermostat, moved, found "constructor".',
    ],
  ],
  [
    "a batch's particulars",
    "holdband: 1\nappliances:\n  cooker:\n    moved: May 1\ncontainers:\n  jars: { stands: basin, changed: 2026-02-30 }\ncultures: [reuteri]\nbatches:\n  - date: 2026-11-20\n    culture: reuteri\n    appliance: cooker\n    container: jars\n    milk: thinn\n    heated: a bit\n    generation: 0\n    starter: 5\n    hours: 300\n    separated: litle\n    sourness: sour\n    trouble: [pnk, none]\n    moved: perhaps\n    seperated: much\n  - { date: 2026-11-20, culture: reuteri, appliance: cooker, container: jars, trouble: [none, pink], generation: 1001, starter: 101 % }\n  - { date: 2026-11-20, culture: reuteri, appliance: cooker, container: jars, trouble: [none, pink] }\n",
    [
      '- Line 4, appliances > cooker > moved: expected the day it was last moved or repaired, as year-month-day, found "May 1"; write for example moved: 2026-05-01.',
      '- Line 6, containers > jars > changed: expected the day jars, lid or amount last changed, as year-month-day, found "2026-02-30"; write for example changed: 2026-05-01.',
      '- Line 13, batches > 1 > milk: expected one of: thin, usual, rich, found "thinn"; did you mean "thin"?',
      '- Line 14, batches > 1 > heated: expected yes or no, found "a bit"; write for example heated: yes.',
      '- Line 15, batches > 1 > generation: expected a whole number from 1 (set with a fresh starter) to 1000, found "0"; write for example generation: 2.',
      '- Line 16, batches > 1 > starter: expected the starter as a part of the whole, from 0 % to 100 %, found "5"; write for example starter: 5 %.',
      '- Line 17, batches > 1 > hours: expected hours, more than 0 and at most 240, found "300"; write for example hours: 36.',
      '- Line 18, batches > 1 > separated: expected one of: none, a little, much, found "litle"; write for example separated: none.',
      '- Line 19, batches > 1 > sourness: expected one of: mild, as wished, sharp, found "sour"; write for example sourness: mild.',
      '- Line 20, batches > 1 > trouble > 1: expected one of: pink, orange, fuzzy, off-smelling, none, found "pnk"; did you mean "pink"?',
      '- Line 21, batches > 1 > moved: expected yes or no, found "perhaps"; write for example moved: no.',
      '- Line 22, batches > 1 > seperated: expected one of the keys date, culture, appliance, setting, container, milk, heated, generation, starter, hours, separated, sourness, trouble, moved, notes, found "seperated"; did you mean "separated"?',
      '- Line 23, batches > 2 > generation: expected a whole number from 1 (set with a fresh starter) to 1000, found "1001"; write for example generation: 2.',
      '- Line 23, batches > 2 > starter: expected the starter as a part of the whole, from 0 % to 100 %, found "101 %"; write for example starter: 5 %.',
      "- Line 24, batches > 3 > trouble: expected what was seen, or none, found both; write for example trouble: [pink, fuzzy].",
    ],
  ],
  [
    "a unit that is none",
    "holdband: 1\nunit: K\n",
    ['- Line 2, unit: expected C or F, found "K"; write for example unit: C.'],
  ],
  [
    "an altitude too high",
    "holdband: 1\naltitude: 14500 m\n",
    [
      '- Line 2, altitude: expected a height above sea level from -450 to 6000 m, found "14500 m"; write for example 1450 m or 4760 ft.',
    ],
  ],
  [
    "a room upside down",
    "holdband: 1\nroom: 24..17\n",
    [
      '- Line 2, room: expected two temperatures of a room (at most 60 degC), the lower first, found "24..17"; write for example 17..24 or 63F..75F.',
    ],
  ],
  [
    "a kind that is none",
    "holdband: 1\nappliances:\n  box:\n    kind: warmingbox\n",
    [
      '- Line 4, appliances > box > kind: expected one of: cooker, water bath, circulating bath, warming box, other, found "warmingbox"; did you mean "warming box"?',
    ],
  ],
  [
    "two controls",
    "holdband: 1\nappliances:\n  box:\n    control: fixed\n    marks: [1, 2]\n",
    [
      "- Line 5, appliances > box > marks: expected only one of control, programs, steps and marks, found control and marks.",
    ],
  ],
  [
    "steps that do not fit",
    "holdband: 1\nappliances:\n  box:\n    steps: 30..45 by 4\n",
    [
      '- Line 4, appliances > box > steps: expected the lowest (at most 65 degC) and highest setting, a whole number of steps apart, and the step, found "30..45 by 4"; write for example steps: 30..45 by 0.5 or 86F..113F by 1F.',
    ],
  ],
  [
    "a mark twice",
    "holdband: 1\nappliances:\n  box:\n    marks: [1, 2, 1]\n",
    ['- Line 4, appliances > box > marks: expected each of the marks once, found "1" twice.'],
  ],
  [
    "a section that is a list",
    "holdband: 1\nappliances:\n  - box\n",
    ["- Line 2, appliances: expected entries, each indented under a name of yours, found a list."],
  ],
  [
    "a list that is a section",
    "holdband: 1\ncultures:\n  reuteri:\n",
    [
      '- Line 2, cultures: expected a list, each entry on its own line after "- ", found a group of keys.',
    ],
  ],
  [
    "a container without its stand",
    "holdband: 1\ncontainers:\n  jars:\n    volume: half\n    count: 2.5\n",
    [
      "- Line 3, containers > jars > stands: expected one of: basin, jars in water, jars in air, found nothing; write for example stands: basin.",
      '- Line 4, containers > jars > volume: expected the volume of one vessel, found "half"; write for example volume: 0.5 L.',
      '- Line 5, containers > jars > count: expected how many there are, a whole number, found "2.5"; write for example count: 6.',
    ],
  ],
  [
    "checks",
    "holdband: 1\nthermometers:\n  pen:\n    resolution: 0\n    checks:\n      - ice: [0.3, cold]\n      - ice: 0.3\n        boiling: 95\n      - date: 3.10.2026\n      - ice: 0.3\n        pressure: 1013 hPa\n      - reference: 40\n        confirmed: perhaps\n",
    [
      '- Line 4, thermometers > pen > resolution: expected a step of temperature above 0, found "0"; write for example 0.1 or 0.2F.',
      '- Line 6, thermometers > pen > checks > 1 > ice > 2: expected what the thermometer showed, found "cold"; write for example 0.3, or 95.2, or 203.4F.',
      "- Line 7, thermometers > pen > checks > 2: expected one of ice, boiling and reference, with its readings, found ice and boiling; write for example - ice: [0.3, 0.2].",
      '- Line 9, thermometers > pen > checks > 3 > date: expected a date as year-month-day, found "3.10.2026"; write for example 2026-10-03.',
      '- Line 11, thermometers > pen > checks > 4 > pressure: expected an air pressure and whether it is read on the spot (station) or from a forecast (sea-level), found "1013 hPa"; write for example "851 hPa station" or "1013 hPa sea-level".',
      '- Line 13, thermometers > pen > checks > 5 > confirmed: expected yes or no, found "perhaps"; write for example confirmed: yes.',
    ],
  ],
  [
    "a mistyped culture",
    "holdband: 1\ncultures:\n  - reutri\n  - id: mine\n    low: 33\n    high: 30\n    ceiling: 29\n    hours: 20h\n  - id: kefir\n    target: 30\n  - kefir\n  - id: other\n    low: 30\n",
    [
      '- Line 3, cultures > 1 > id: expected a culture of the catalogue, or with it low, high, ceiling, hours, found "reutri"; did you mean "reuteri"?',
      "- Line 5, cultures > 2 > low: expected low below high (30 degC), found 33 degC.",
      "- Line 7, cultures > 2 > ceiling: expected a ceiling at or above high (30 degC), found 29 degC.",
      "- Line 10, cultures > 3 > target: expected a target from low to high (18 to 24 degC), found 30 degC.",
      "- Line 12, cultures > 5 > high: expected high for a culture that is not in the catalogue, found nothing; write for example high: 33.",
      "- Line 12, cultures > 5 > ceiling: expected ceiling for a culture that is not in the catalogue, found nothing; write for example ceiling: 40, the temperature it must never pass.",
      "- Line 12, cultures > 5 > hours: expected hours for a culture that is not in the catalogue, found nothing; write for example hours: 20h.",
    ],
  ],
  [
    "an unknown appliance",
    "holdband: 1\nappliances:\n  box:\n    marks: [low, 1, 2, high]\n  bath:\n    steps: 30..45 by 0.5\n  cooker:\n    control: fixed\n  steamer:\n    programs: [Warm, Yoghurt]\ncontainers:\n  jars:\n    stands: jars in water\ntests:\n  one:\n    appliance: coker\n    container: jars\n    files:\n      - file: readings/a.csv\n        sha256: abababababababababababababababababababababababababababababababab\n",
    [
      '- Line 16, tests > one > appliance: expected an appliance of this kitchen (box, bath, cooker, steamer), found "coker"; did you mean "cooker"?',
    ],
  ],
  [
    "an unknown container and thermometer",
    "holdband: 1\nappliances:\n  box:\n    marks: [low, 1, 2, high]\n  bath:\n    steps: 30..45 by 0.5\n  cooker:\n    control: fixed\n  steamer:\n    programs: [Warm, Yoghurt]\ntests:\n  one:\n    appliance: cooker\n    container: jars\n    files:\n      - file: readings/a.csv\n        sha256: abababababababababababababababababababababababababababababababab\n        probes:\n          Jar: { place: fod, thermometer: pen }\n",
    [
      '- Line 14, tests > one > container: expected a container of this kitchen (none is there yet), found "jars".',
      '- Line 19, tests > one > files > 1 > probes > Jar > place: expected one of: food, bath, room, found "fod"; did you mean "food"?',
      '- Line 19, tests > one > files > 1 > probes > Jar > thermometer: expected a thermometer of this kitchen (none is there yet), found "pen".',
    ],
  ],
  [
    "a setting off the steps",
    "holdband: 1\nappliances:\n  box:\n    marks: [low, 1, 2, high]\n  bath:\n    steps: 30..45 by 0.5\n  cooker:\n    control: fixed\n  steamer:\n    programs: [Warm, Yoghurt]\ncontainers:\n  jars:\n    stands: jars in water\ntests:\n  one:\n    appliance: bath\n    setting: 38.3\n    container: jars\n    files:\n      - file: readings/a.csv\n        sha256: abababababababababababababababababababababababababababababababab\n",
    [
      '- Line 17, tests > one > setting: expected for bath: a step of 0.5 from 30 to 45 degC, nearest 38 or 38.5, found "38.3".',
    ],
  ],
  [
    "a setting beyond the steps",
    "holdband: 1\nappliances:\n  box:\n    marks: [low, 1, 2, high]\n  bath:\n    steps: 30..45 by 0.5\n  cooker:\n    control: fixed\n  steamer:\n    programs: [Warm, Yoghurt]\ncontainers:\n  jars:\n    stands: jars in water\ntests:\n  one:\n    appliance: bath\n    setting: 50\n    container: jars\n    files:\n      - file: readings/a.csv\n        sha256: abababababababababababababababababababababababababababababababab\n",
    [
      '- Line 17, tests > one > setting: expected for bath: a step of 0.5 from 30 to 45 degC, nearest 45, found "50".',
    ],
  ],
  [
    "no setting",
    "holdband: 1\nappliances:\n  box:\n    marks: [low, 1, 2, high]\n  bath:\n    steps: 30..45 by 0.5\n  cooker:\n    control: fixed\n  steamer:\n    programs: [Warm, Yoghurt]\ncontainers:\n  jars:\n    stands: jars in water\ntests:\n  one:\n    appliance: bath\n    container: jars\n    files:\n      - file: readings/a.csv\n        sha256: abababababababababababababababababababababababababababababababab\n",
    [
      "- Line 15, tests > one > setting: expected for bath: a step of 0.5 from 30 to 45 degC, found no setting.",
    ],
  ],
  [
    "a setting for none",
    "holdband: 1\nappliances:\n  box:\n    marks: [low, 1, 2, high]\n  bath:\n    steps: 30..45 by 0.5\n  cooker:\n    control: fixed\n  steamer:\n    programs: [Warm, Yoghurt]\ncontainers:\n  jars:\n    stands: jars in water\ntests:\n  one:\n    appliance: cooker\n    setting: 38\n    container: jars\n    files:\n      - file: readings/a.csv\n        sha256: abababababababababababababababababababababababababababababababab\n",
    [
      '- Line 17, tests > one > setting: expected for cooker: no setting, its control is fixed, found "38".',
    ],
  ],
  [
    "a mistyped mark",
    "holdband: 1\nappliances:\n  box:\n    marks: [low, 1, 2, high]\n  bath:\n    steps: 30..45 by 0.5\n  cooker:\n    control: fixed\n  steamer:\n    programs: [Warm, Yoghurt]\ncontainers:\n  jars:\n    stands: jars in water\ntests:\n  one:\n    appliance: box\n    setting: hgh\n    container: jars\n    files:\n      - file: readings/a.csv\n        sha256: abababababababababababababababababababababababababababababababab\n",
    [
      '- Line 17, tests > one > setting: expected for box: one of its marks (low, 1, 2, high), found "hgh"; did you mean "high"?',
    ],
  ],
  [
    "a mistyped program",
    "holdband: 1\nappliances:\n  box:\n    marks: [low, 1, 2, high]\n  bath:\n    steps: 30..45 by 0.5\n  cooker:\n    control: fixed\n  steamer:\n    programs: [Warm, Yoghurt]\ncontainers:\n  jars:\n    stands: jars in water\ntests:\n  one:\n    appliance: steamer\n    setting: Yogurt\n    container: jars\n    files:\n      - file: readings/a.csv\n        sha256: abababababababababababababababababababababababababababababababab\n",
    [
      '- Line 17, tests > one > setting: expected for steamer: one of its programs (Warm, Yoghurt), found "Yogurt"; did you mean "Yoghurt"?',
    ],
  ],
  [
    "no files",
    "holdband: 1\nappliances:\n  box:\n    marks: [low, 1, 2, high]\n  bath:\n    steps: 30..45 by 0.5\n  cooker:\n    control: fixed\n  steamer:\n    programs: [Warm, Yoghurt]\ncontainers:\n  jars:\n    stands: jars in water\ntests:\n  one:\n    appliance: cooker\n    container: jars\n",
    [
      "- Line 15, tests > one > files: expected at least one logger's file, found nothing; write for example - file: readings/night.csv.",
    ],
  ],
  [
    "paths out of the folder",
    'holdband: 1\nappliances:\n  box:\n    marks: [low, 1, 2, high]\n  bath:\n    steps: 30..45 by 0.5\n  cooker:\n    control: fixed\n  steamer:\n    programs: [Warm, Yoghurt]\ncontainers:\n  jars:\n    stands: jars in water\ntests:\n  one:\n    appliance: cooker\n    container: jars\n    files:\n      - file: ../a.csv\n        sha256: abababababababababababababababababababababababababababababababab\n      - file: /etc/passwd\n        sha256: abababababababababababababababababababababababababababababababab\n      - file: C:/a.csv\n        sha256: abababababababababababababababababababababababababababababababab\n      - file: a\\b.csv\n        sha256: abababababababababababababababababababababababababababababababab\n      - file: "a\\u0001.csv"\n        sha256: abababababababababababababababababababababababababababababababab\n      - file: a//b.csv\n        sha256: abababababababababababababababababababababababababababababababab\n      - file: ./a.csv\n        sha256: abababababababababababababababababababababababababababababababab\n      - file: a/../b.csv\n        sha256: abababababababababababababababababababababababababababababababab\n',
    [
      '- Line 19, tests > one > files > 1 > file: expected a path inside the kitchen folder, with forward slashes and without .., found "../a.csv"; write for example file: readings/night.csv.',
      '- Line 21, tests > one > files > 2 > file: expected a path inside the kitchen folder, with forward slashes and without .., found "/etc/passwd"; write for example file: readings/night.csv.',
      '- Line 23, tests > one > files > 3 > file: expected a path inside the kitchen folder, with forward slashes and without .., found "C:/a.csv"; write for example file: readings/night.csv.',
      '- Line 25, tests > one > files > 4 > file: expected a path inside the kitchen folder, with forward slashes and without .., found "a\\b.csv"; write for example file: readings/night.csv.',
      '- Line 27, tests > one > files > 5 > file: expected a path inside the kitchen folder, with forward slashes and without .., found "a .csv"; write for example file: readings/night.csv.',
      '- Line 29, tests > one > files > 6 > file: expected a path inside the kitchen folder, with forward slashes and without .., found "a//b.csv"; write for example file: readings/night.csv.',
      '- Line 31, tests > one > files > 7 > file: expected a path inside the kitchen folder, with forward slashes and without .., found "./a.csv"; write for example file: readings/night.csv.',
      '- Line 33, tests > one > files > 8 > file: expected a path inside the kitchen folder, with forward slashes and without .., found "a/../b.csv"; write for example file: readings/night.csv.',
    ],
  ],
  [
    "a test's file",
    "holdband: 1\nappliances:\n  box:\n    marks: [low, 1, 2, high]\n  bath:\n    steps: 30..45 by 0.5\n  cooker:\n    control: fixed\n  steamer:\n    programs: [Warm, Yoghurt]\ncontainers:\n  jars:\n    stands: jars in water\ntests:\n  one:\n    appliance: cooker\n    container: jars\n    files:\n      - file: readings/a.csv\n        sha256: abababababababababababababababababababababababababababababababab\n        starts: 22:10\n        unit: K\n        date-order: german\n        decimal: ','\n        interval: often\n        columns: { a: b }\n        probes: [Jar]\n",
    [
      '- Line 21, tests > one > files > 1 > starts: expected a date and a time, found "22:10"; write for example starts: 2026-10-03 22:10.',
      '- Line 22, tests > one > files > 1 > unit: expected C or F, found "K"; write for example unit: C.',
      '- Line 23, tests > one > files > 1 > date-order: expected one of: day-first, month-first, found "german"; write for example date-order: day-first.',
      '- Line 24, tests > one > files > 1 > decimal: expected one of: comma, point, found ","; write for example decimal: comma.',
      '- Line 25, tests > one > files > 1 > interval: expected the time between two readings, found "often"; write for example interval: 30s.',
      '- Line 26, tests > one > files > 1 > columns > 1: expected a column\'s name as the file has it, found nothing; write for example "Jar".',
      "- Line 27, tests > one > files > 1 > probes: expected the file's columns, each with its place, found a list; write for example Jar: { place: food, thermometer: stick }.",
    ],
  ],
  [
    "batches",
    "holdband: 1\nappliances:\n  box:\n    marks: [low, 1, 2, high]\n  bath:\n    steps: 30..45 by 0.5\n  cooker:\n    control: fixed\n  steamer:\n    programs: [Warm, Yoghurt]\ncontainers:\n  jars:\n    stands: jars in water\ncultures: [reuteri]\nbatches:\n  - { date: 2026-02-30, culture: kefir, appliance: cooker, container: jars }\n  - { culture: reutri, container: jars }\n",
    [
      '- Line 16, batches > 1 > date: expected a date as year-month-day, found "2026-02-30"; write for example 2026-10-03.',
      '- Line 16, batches > 1 > culture: expected a culture of this kitchen (reuteri), found "kefir"; write for example "- kefir" under cultures.',
      "- Line 17, batches > 2 > date: expected a date as year-month-day, found nothing; write for example 2026-10-03.",
      "- Line 17, batches > 2 > appliance: expected an appliance's name, found nothing; write for example appliance: warm-cooker.",
      '- Line 17, batches > 2 > culture: expected a culture of this kitchen (reuteri), found "reutri"; did you mean "reuteri"?',
    ],
  ],
];
