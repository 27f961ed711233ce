// The inputs of a form in the address of its page: `?from=round+1.0&to=round+0.4`.

// What the address gives for the names that the form has; a name that it has not is left alone.
export function inputsOf(address, names) {
  const query = new URL(address).searchParams;
  return Object.fromEntries(names.filter((name) => query.get(name)).map((name) => [name, query.get(name).trim()]));
}

// The address of the same page with these inputs.
export function addressWith(address, inputs) {
  const found = new URL(address);
  found.search = new URLSearchParams(Object.entries(inputs).map(([name, value]) => [name, String(value)]));
  found.hash = "";
  return found.href;
}
