// Keeps an overlay fresh: looks every half minute whether the page changed, and shows it then.
"use strict";

(() => {
  const renew = async () => {
    const answer = await fetch(window.location.href, { cache: "no-cache" });
    if (!answer.ok) {
      return;
    }
    const fresh = new DOMParser().parseFromString(await answer.text(), "text/html");
    const main = fresh.querySelector("main");
    if (main) {
      document.querySelector("main").replaceWith(document.adoptNode(main));
      document.dispatchEvent(new Event("loopstart:renewed"));
    }
  };
  // Whatever fails now may work the next time; until then the last picture stays.
  window.setInterval(() => renew().catch(() => undefined), 30000);
})();
