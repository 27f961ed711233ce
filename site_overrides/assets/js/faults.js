// Faults: narrows the finder by three questions, and ranks a fault's causes for the metal in hand.
const asked = new URL(location.href).searchParams.get("alloy") ?? "";

// The rows of the tree, each fault once: it may stand in several parts of the work.
function faults() {
  const seen = new Map();
  for (const row of document.querySelectorAll(".fault-row")) {
    const href = row.querySelector("a").href;
    if (!seen.has(href)) seen.set(href, row);
  }
  return [...seen.values()];
}

const has = (row, key, word) => !word || row.dataset[key].split(" ").includes(word);

// The first word of a record says where a fault mostly shows: 0 there, 1 at the others.
const later = (row, key, word) => (!word || row.dataset[key].split(" ")[0] === word ? 0 : 1);

function startFinder(form) {
  const [when, look, metal] = ["when", "look", "metal"].map((name) => form.querySelector(`#fault-${name}`));
  const found = form.querySelector(".fault-found");
  const count = form.querySelector(".fault-count");
  const tree = document.querySelector(".fault-tree");
  const all = faults();

  const update = () => {
    const any = when.value || look.value || metal.value;
    const fitting = all.filter((row) => has(row, "when", when.value) && has(row, "looks", look.value));
    const prone = (row) => (metal.value && has(row, "prone", metal.value) ? 0 : 1);
    const away = (row) => 2 * later(row, "when", when.value) + later(row, "looks", look.value);
    const foreign = (row) => (metal.value && row.dataset.usual && !has(row, "usual", metal.value) ? 1 : 0);
    fitting.sort((a, b) => foreign(a) - foreign(b) || prone(a) - prone(b) || away(a) - away(b));
    found.replaceChildren(...(any ? fitting.map((row) => shown(row, metal.value, prone(row) === 0)) : []));
    count.textContent = any ? `${fitting.length} of ${all.length} faults` : "";
    tree.hidden = Boolean(any);
  };

  form.hidden = false;
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("change", update);
  update(); // a browser may have kept what was chosen
}

// A row of the answer: it takes the metal along to the fault's page.
function shown(row, alloy, prone) {
  const copy = row.cloneNode(true);
  copy.classList.remove("fault-row");
  const link = copy.querySelector("a");
  if (alloy) link.search = `?alloy=${alloy}`;
  if (prone) {
    const word = document.createElement("span");
    word.className = "index-figure";
    word.textContent = "this metal is prone";
    link.after(word);
  }
  return copy;
}

function startRanking(list) {
  const orders = JSON.parse(list.dataset.orders);
  const general = [...list.children];
  const choice = document.querySelector("#fault-alloy");
  const said = document.querySelector(".fault-said");

  const update = () => {
    const order = orders[choice.value];
    const at = (position) => general.find((cause) => Number(cause.dataset.position) === position);
    const kept = order ? order.map(at) : general;
    list.replaceChildren(...kept);
    const name = choice.selectedOptions[0].textContent;
    const left = general.length - kept.length;
    said.textContent = !choice.value ? "" : order
      ? `In ${name} the order is this${left ? `, and ${left} of the causes cannot be` : ""}.`
      : `In ${name} the general order holds.`;
  };

  document.querySelector(".fault-for").hidden = false;
  if ([...choice.options].some((option) => option.value === asked)) choice.value = asked;
  choice.addEventListener("change", update);
  update();
}

for (const form of document.querySelectorAll(".fault-finder")) startFinder(form);
for (const list of document.querySelectorAll(".causes")) startRanking(list);
