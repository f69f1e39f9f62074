// @ts-check
/** What the scripts of the kit and from-paper.js, which come as files of their own, take from those of worksheets. */
Object.assign(globalThis.linkwright, { say, built, keptTyped, inWords, units: () => chosenUnits() });
