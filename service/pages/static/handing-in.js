// A file may be dropped, and an import tells how far it is. Without this script both forms are sent
// as any form is.
const STEPS = {
  waiting: "Sending",
  reading: "Reading",
  storing: "Keeping",
  merging: "Comparing with what is known",
  stored: "Keeping",
  counting: "Counting",
  done: "Done",
};

function tell(form, words, share) {
  const shown = form.querySelector(".progress");
  const bar = shown.querySelector("progress");
  shown.hidden = false;
  shown.querySelector("span").textContent = words;
  if (share === null) {
    bar.removeAttribute("value");
  } else {
    bar.value = share;
  }
}

async function ask(form, watch) {
  const answer = await fetch(`/desk/progress/${watch}`);
  if (!answer.ok) {
    return;
  }
  const far = await answer.json();
  const done = far.total ? `, ${far.done.toLocaleString("en")} of ${far.total.toLocaleString("en")}` : "";
  tell(form, `${STEPS[far.step] ?? far.step}${done}`, far.total ? (100 * far.done) / far.total : null);
}

function send(form, fields, watch) {
  const request = new XMLHttpRequest();
  const asks = watch ? setInterval(() => ask(form, watch), 700) : 0;
  request.open("POST", form.action);
  request.upload.addEventListener("progress", (event) => {
    if (event.lengthComputable && event.loaded < event.total) {
      tell(form, "Sending", (100 * event.loaded) / event.total);
    }
  });
  request.addEventListener("loadend", () => {
    clearInterval(asks);
    if (request.status === 200 && request.responseURL !== new URL(form.action, location.href).href) {
      location.href = request.responseURL;
      return;
    }
    if (!request.responseText) {
      tell(form, "It could not be sent: try again.", 0);
      return;
    }
    const page = new DOMParser().parseFromString(request.responseText, "text/html");
    document.title = page.title;
    document.getElementById("main").replaceChildren(...page.getElementById("main").childNodes);
    document.getElementById("main").focus();
    start();
    scrollTo(0, 0);
  });
  request.send(fields);
}

function watchName() {
  return `desk-${Array.from(crypto.getRandomValues(new Uint8Array(12)), (one) => one.toString(16).padStart(2, "0")).join("")}`;
}

function start() {
  const giving = document.getElementById("hand-in");
  const keeping = document.getElementById("keep");
  for (const form of [giving, keeping].filter(Boolean)) {
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      const fields = new FormData(form, event.submitter);
      const keeps = fields.get("do") === "keep";
      const watch = keeps ? watchName() : "";
      if (keeps) {
        fields.set("watch", watch);
      }
      tell(form, "Sending", null);
      send(form, fields, watch);
    });
  }
  if (giving) {
    takeDrops(giving, document.getElementById("file"));
  }
}

function takeDrops(form, field) {
  for (const kind of ["dragenter", "dragover"]) {
    form.addEventListener(kind, (event) => {
      event.preventDefault();
      form.classList.add("over");
    });
  }
  form.addEventListener("dragleave", () => form.classList.remove("over"));
  form.addEventListener("drop", (event) => {
    event.preventDefault();
    form.classList.remove("over");
    if (event.dataTransfer.files.length) {
      field.files = event.dataTransfer.files;
      form.requestSubmit();
    }
  });
}

start();
