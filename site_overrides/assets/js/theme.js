// Paper or soot: the reader's choice, remembered; without one the system decides in CSS.
// A classic script in the head, so that a chosen scheme is set before anything is drawn.
(function () {
  const KEY = "temperbook-scheme";
  const root = document.documentElement;
  const dark = matchMedia("(prefers-color-scheme: dark)");

  function remembered() {
    try {
      const kept = localStorage.getItem(KEY);
      return kept === "paper" || kept === "soot" ? kept : null;
    } catch {
      return null; // storage is refused: the choice lasts for this page
    }
  }

  function choose(scheme) {
    root.dataset.scheme = scheme;
    try {
      localStorage.setItem(KEY, scheme);
    } catch {
      // as above
    }
  }

  function shown() {
    return root.dataset.scheme || (dark.matches ? "soot" : "paper");
  }

  const kept = remembered();
  if (kept) root.dataset.scheme = kept;

  document.addEventListener("DOMContentLoaded", () => {
    const button = document.querySelector("button.scheme");
    if (!button) return;
    // The word says what a press does.
    const say = () => (button.textContent = shown() === "soot" ? "Light" : "Dark");
    button.addEventListener("click", () => {
      choose(shown() === "soot" ? "paper" : "soot");
      say();
    });
    dark.addEventListener("change", say);
    say();
    button.hidden = false;
  });
})();
