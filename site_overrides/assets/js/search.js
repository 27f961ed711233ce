// The search sheet: opens it, asks as letters come, lists what was found.
import { SITE, find, near, plain, readIndex, words } from "./finding.js";

const MOST = 24;
const sheet = document.getElementById("find");

function element(tag, name, text = "") {
  const made = document.createElement(tag);
  made.className = name;
  made.textContent = text;
  return made;
}

function excerpt(entry, query) {
  const first = words(query)[0];
  const at = Math.max(0, ` ${plain(entry.text)}`.search(new RegExp(`[^\\p{L}\\p{N}]${first}`, "u")) - 50);
  const start = at ? entry.text.indexOf(" ", at) + 1 : 0;
  return (start ? "… " : "") + entry.text.slice(start, start + 150).trim() + (start + 150 < entry.text.length ? " …" : "");
}

function shown(entry, query) {
  const item = element("li", "");
  const link = element("a", "find-result");
  link.href = new URL(entry.location, SITE);
  const title = element("span", "find-title", entry.title);
  if (entry.of && entry.of !== entry.title) title.prepend(element("span", "find-place", `${entry.of} / `));
  link.append(title, element("span", "find-said", excerpt(entry, query)));
  item.append(link);
  return item;
}

function start() {
  const [field, list, count] = [".find-words", ".find-results", ".find-count"].map((s) => sheet.querySelector(s));
  let index;
  let last = 0;

  const update = async () => {
    const turn = ++last;
    const query = field.value.trim();
    try {
      index ??= await readIndex();
    } catch {
      count.textContent = "The index cannot be read here. The contents list every page.";
      return;
    }
    if (turn !== last) return; // a later letter has already asked
    const { entries: found, missing } = find(index, query);
    list.replaceChildren(...found.slice(0, MOST).map((entry) => shown(entry, query)));
    const number = found.length === 1 ? "1 page" : `${found.length} pages`;
    const most = missing ? "No page has all these words. With most of them: " : "";
    count.textContent = !query ? "" : found.length ? most + number : "No page has all these words. ";
    if (query && !found.length) {
      for (const word of near(index, query)) {
        const button = element("button", "find-near", word);
        button.type = "button";
        button.addEventListener("click", () => ((field.value = word), update(), field.focus()));
        const item = element("li", "find-near-item");
        item.append(button);
        list.append(item);
      }
    }
  };

  const open = () => (sheet.showModal(), field.focus(), field.select(), update());
  for (const button of document.querySelectorAll(".find-open")) {
    button.hidden = false;
    button.addEventListener("click", open);
  }
  document.addEventListener("keydown", (event) => {
    const writing = event.target.closest?.("input, select, textarea, [contenteditable]");
    if (event.key === "/" && !writing && !sheet.open) (event.preventDefault(), open());
  });
  field.addEventListener("input", update);
  sheet.querySelector(".find-close").addEventListener("click", () => sheet.close());
  sheet.addEventListener("click", (event) => {
    if (event.target === sheet || event.target.closest("a")) sheet.close(); // beside the sheet, or on to a page
  });
  sheet.querySelector("form").addEventListener("submit", (event) => {
    event.preventDefault();
    list.querySelector("a")?.click();
  });
}

if (sheet?.showModal) start();
