// Contents: the browser opens and closes the popover by itself. Here is only what it leaves out.
const contents = document.getElementById("contents");
const openers = document.querySelectorAll(".contents-open");

if (contents && "popover" in HTMLElement.prototype) {
  // A link to a place on this same page leaves the sheet open: close it.
  contents.addEventListener("click", (event) => {
    if (event.target.closest("a")) contents.hidePopover();
  });
  contents.addEventListener("toggle", (event) => {
    if (event.newState === "open") {
      const here = contents.querySelector("[aria-current]") || contents.querySelector("a");
      here?.focus({ preventScroll: false });
    }
  });
} else if (contents) {
  // An older browser shows the list at the end of the page: go there.
  for (const opener of openers) {
    opener.addEventListener("click", () => contents.scrollIntoView());
  }
  contents.querySelector(".contents-close")?.remove();
}
