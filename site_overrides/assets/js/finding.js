// What a search finds in search/search_index.json, which MkDocs writes. All words must be found, or most of three and more;
// titles weigh most.
export const SITE = new URL("../../", import.meta.url);

export const plain = (text) =>
  text.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase();
// "18ct" is two words, as "18 ct" is.
export const words = (text) => plain(text).match(/\p{L}+|\p{N}+/gu) ?? [];

export async function readIndex() {
  const answer = await fetch(new URL("search/search_index.json", SITE));
  if (!answer.ok) throw new Error(`search index: ${answer.status}`);
  const { docs } = await answer.json();
  const pages = new Map();
  return docs.map((doc) => {
    const page = doc.location.split("#")[0];
    if (page === doc.location) pages.set(page, doc.title);
    const text = doc.text.replace(/<[^>]+>/g, " ");
    const heads = [...words(doc.title), ...words(doc.location)];
    return { ...doc, text, page, of: pages.get(page), heads, body: ` ${words(text).join(" ")} ` };
  });
}

// How well one entry answers: 0 where more words are missing than may be.
function weight(entry, asked, missing) {
  let sum = entry.page === entry.location ? 4 : 0;
  if (entry.page.startsWith("alloys/")) sum += 6; // what a bench asks for most
  for (const word of asked) {
    const head = entry.heads.includes(word) ? 30 : entry.heads.some((w) => w.startsWith(word)) ? 18 : 0;
    const seen = entry.body.includes(` ${word} `) ? 4 : entry.body.includes(` ${word}`) ? 2 : 0;
    if (!head && !seen && --missing < 0) return 0;
    sum += head + seen;
  }
  return sum - Math.min(entry.heads.length, 8) / 4;
}

// The best entry of each page, best page first, of those with the fewest words missing; how many are missing.
export function find(index, query) {
  const asked = words(query);
  const most = asked.length < 3 ? 0 : Math.floor(asked.length / 2);
  for (let missing = 0; asked.length && missing <= most; missing++) {
    const best = new Map();
    for (const entry of index) {
      const found = weight(entry, asked, missing);
      if (found > (best.get(entry.page)?.found ?? 0)) best.set(entry.page, { entry, found });
    }
    const entries = [...best.values()].sort((a, b) => b.found - a.found).map(({ entry }) => entry);
    if (entries.length) return { entries, missing };
  }
  return { entries: [], missing: 0 };
}

function distance(a, b) {
  let row = [...b].map((_, i) => i + 1);
  [...a].forEach((letter, i) => {
    let corner = i;
    let left = i + 1;
    row = row.map((up, j) => {
      const here = Math.min(up + 1, left + 1, corner + (letter === b[j] ? 0 : 1));
      corner = up;
      return (left = here);
    });
  });
  return row.at(-1) ?? a.length;
}

// Words of titles that are close to a word nobody has.
export function near(index, query) {
  const known = [...new Set(index.flatMap((entry) => entry.heads))].filter((w) => w.length > 3);
  const far = words(query).flatMap((asked) => known.map((word) => ({ word, by: distance(asked, word) })));
  return [...new Set(far.filter(({ by }) => by <= 2).sort((a, b) => a.by - b.by).map(({ word }) => word))].slice(0, 4);
}
