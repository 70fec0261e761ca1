// Shows times where the viewer is, and counts down to a closing. The page says all without it.
"use strict";

(() => {
  const options = {
    weekday: "long", day: "numeric", month: "long", hour: "2-digit", minute: "2-digit",
    hourCycle: "h23",
  };
  let opened = Date.now();
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone || "";

  const inOwnZone = (iso) => new Intl.DateTimeFormat("en-GB", options).format(new Date(iso));

  const many = (number, word) => `${number} ${word}${number === 1 ? "" : "s"}`;

  // "2 days, 3 hours" and, in the last day, down to the second.
  const inWords = (seconds) => {
    const days = Math.floor(seconds / 86400);
    const hours = Math.floor((seconds % 86400) / 3600);
    const minutes = Math.floor((seconds % 3600) / 60);
    if (days > 0) {
      return `${many(days, "day")}, ${many(hours, "hour")}, ${many(minutes, "minute")}`;
    }
    const clock = [hours, minutes, seconds % 60].map((part) => String(part).padStart(2, "0"));
    return clock.join(":");
  };

  const showOwnTimes = (root) => {
    for (const row of root.querySelectorAll(".own")) {
      const time = row.querySelector(".own-time");
      time.textContent = inOwnZone(time.dateTime);
      const place = zone.split("/").pop().replaceAll("_", " ");
      row.querySelector(".own-zone").textContent = place ? ` (${place})` : "";
      row.hidden = false;
    }
    for (const time of root.querySelectorAll("time:not(.own-time)")) {
      time.title = `Where you are: ${inOwnZone(time.dateTime)}`;
    }
  };

  // The page may be a minute old. If the clocks differ by more, then this one is wrong, and the
  // game goes by the service's.
  const difference = (iso) => {
    const found = Date.parse(iso) - opened;
    return Math.abs(found) > 300000 ? found : 0;
  };

  const countDown = () => {
    for (const place of document.querySelectorAll("[data-until]")) {
      const count = place.querySelector(".count");
      if (!count) {
        continue;
      }
      const now = Date.now() + difference(place.dataset.now);
      const left = Math.floor((Date.parse(place.dataset.until) - now) / 1000);
      if (left > 0) {
        count.textContent = inWords(left);
      } else {
        place.textContent = "The time is over.";
      }
    }
  };

  showOwnTimes(document);
  countDown();
  window.setInterval(countDown, 1000);
  document.addEventListener("loopstart:renewed", () => {
    opened = Date.now();
    showOwnTimes(document);
    countDown();
  });
})();
