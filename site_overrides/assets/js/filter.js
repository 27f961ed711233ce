// Index filter: shows the rows that hold every word typed. The list is complete without it.
const plain = (text) =>
  text.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase();

// What a row answers to: its text and the other names in data-words.
const answers = (row) => plain(`${row.textContent} ${row.dataset.words ?? ""}`);

export function narrow(rows, query) {
  const asked = plain(query).split(/\s+/).filter(Boolean);
  return rows.filter(({ row, text }) => {
    row.hidden = !asked.every((word) => text.includes(word));
    return !row.hidden;
  }).length;
}

function start(finder) {
  const field = finder.querySelector("input");
  const count = finder.querySelector(".finder-count");
  const rows = [...document.querySelectorAll(".index-row")].map((row) => ({ row, text: answers(row) }));
  const groups = document.querySelectorAll(".index-group");

  const update = () => {
    const left = narrow(rows, field.value);
    for (const group of groups) group.hidden = !group.querySelector(".index-row:not([hidden])");
    count.textContent = `${left} of ${rows.length}`;
  };

  finder.hidden = false;
  field.addEventListener("input", update);
  update(); // a browser may have kept what was typed
}

for (const finder of document.querySelectorAll(".finder")) start(finder);
