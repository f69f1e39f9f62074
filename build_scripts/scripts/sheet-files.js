// @ts-check
/** A file given to a worksheet: refused unread when it cannot be one, else read as base64. */

/** Larger files would not fit in the memory that a browser gives. */
const LARGEST_FILE = 50_000_000;
/** From this size on the answer takes so long that it is said. */
const LARGE_FILE = 1_000_000;

/** @param {number} bytes */
const megabytes = (bytes) => Math.ceil(bytes / 1e6);

/** What is wrong with a file as a sentence, or nothing. @param {File} file @returns {string} */
function fileFault(file) {
  if (file.size === 0) return say("file-empty", { file: file.name });
  if (file.size <= LARGEST_FILE) return "";
  return say("file-too-large", { file: file.name, megabytes: megabytes(file.size), most: megabytes(LARGEST_FILE) });
}

/** What is said while a file is worked out. @param {File} file @returns {string} */
function fileNote(file) {
  return say(file.size > LARGE_FILE ? "reading-large-file" : "reading-file", { file: file.name, megabytes: megabytes(file.size) });
}

/** @param {File} file @returns {Promise<string>} its content, base64; empty when it cannot be read */
async function fileContent(file) {
  const address = await new Promise((resolve) => {
    const reader = new FileReader();
    reader.onload = () => resolve(reader.result);
    reader.onerror = () => resolve("");
    reader.readAsDataURL(file);
  });
  return String(address).slice(String(address).indexOf(",") + 1);
}
