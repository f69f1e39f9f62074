// @ts-check
/** What the scripts of the kit, which come as a file of their own, take from those of worksheets. */
Object.assign(globalThis.linkwright, { say, built, units: () => chosenUnits() });
