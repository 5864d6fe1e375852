import { sampleRespondingCase } from "../simulator/responding-case.ts";
import { analyseCase } from "./study-case.ts";
import { settingText } from "../../src/kitchen/setting.ts";
const c = sampleRespondingCase(Number(process.argv[2]));
const a = await analyseCase(c);
const ad = a.advice.appliances[0]!;
console.log(c.appliance.kind, c.appliance.thermostatted, c.appliance.thermostatKnown, JSON.stringify(c.appliance.swing), "g", c.appliance.roomShare.toFixed(2), "s", c.appliance.runDeviation.toFixed(2), c.thermometer.thermometer.checks.length ? "checked" : "unchecked", "doubt", c.thermometer.doubt.toFixed(2), "err", c.thermometer.error(38).toFixed(2), "room", JSON.stringify(c.kitchen.room), JSON.stringify(c.habit));
for (const x of c.containers) console.log(x.container.id, "phi", x.shareLost.toFixed(3), "tau", x.lagMinutes.toFixed(0));
c.planned.forEach((p, i) => console.log("test", i + 1, settingText(p.setting), p.container.container.id, p.probes, p.mishap, "truth", c.truth.expectedHoldMean({ appliance: "tried", setting: p.setting, container: p.container.container.id }, 8).toFixed(2)));
for (const t of ad.tests) console.log("used", t.testId, settingText(t.setting), t.container, t.place, t.mean.toFixed(2), t.standardUncertainty.toFixed(2));
for (const t of ad.terms) console.log("term", JSON.stringify(t.term), t.prior.mean.toFixed(3), t.prior.standardDeviation.toFixed(3), "->", t.now.mean.toFixed(3), t.now.standardDeviation.toFixed(3));
console.log("scatter", ad.scatter.prior, ad.scatter.now);
for (const k of ad.curves) for (const p of k.points) {
  if (k.points.length > 30 && !(p.basis === "tested" || Math.abs(c.truth.expectedHoldMean({ appliance: "tried", setting: p.setting, container: k.container }, 8) - 38) < 6) ) continue;
  console.log(k.container.padEnd(14), settingText(p.setting).padEnd(12), p.basis.padEnd(13), p.level.mean.toFixed(2), "+-", p.level.standardUncertainty.toFixed(2), "dof", p.level.degreesOfFreedom.toFixed(1), "true", c.truth.expectedHoldMean({ appliance: "tried", setting: p.setting, container: k.container }, 8).toFixed(2));
}
ad.cultures.forEach((u, i) => { const q = c.cultures[i]!; console.log(q.id, q.low, q.high, "ceil", q.ceiling, q.hours, "h:", u.answer, u.best && settingText(u.best.setUp.setting), u.best?.setUp.container, u.chance?.probability.toFixed(3), u.chance?.ceilingRisk?.toFixed(3), u.chance?.verdict, u.change, JSON.stringify(u.obstacles).slice(0,400)); 
 for (const s of c.truth.setUps) { const o = c.truth.outlook(s, q); if (o.share > 0.1 && c.truth.setUps.length < 40) console.log("    ", settingText(s.setting), s.container, "share", o.share.toFixed(2), "p", o.probability.toFixed(2), "ceil", o.ceilingRisk.toFixed(2)); } });
