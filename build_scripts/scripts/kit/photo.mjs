// @ts-check
/** Makes a photo small: a part is known again on it, and a kit of forty stays light. */

/** The longest side of what is kept, in dots; a photo that is still too long a text is made smaller again. */
const SIDES = [900, 600, 400];
const QUALITY = 0.7;
/** Letters that calc.records.kit.schema takes. */
const LONGEST = 400_000;

/** @param {Blob} file @returns {Promise<string>} a data address; empty where the browser cannot read the picture */
export async function shrunk(file) {
  try {
    const picture = await createImageBitmap(file);
    for (const side of SIDES) {
      const scale = Math.min(1, side / Math.max(picture.width, picture.height));
      const canvas = document.createElement("canvas");
      canvas.width = Math.max(1, Math.round(picture.width * scale));
      canvas.height = Math.max(1, Math.round(picture.height * scale));
      canvas.getContext("2d")?.drawImage(picture, 0, 0, canvas.width, canvas.height);
      const address = canvas.toDataURL("image/jpeg", QUALITY);
      if (address.length <= LONGEST) return address;
    }
  } catch {
    // No picture that this browser knows.
  }
  return "";
}
