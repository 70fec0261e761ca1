// The picture of the chart follows what is typed. Without this script a button shows it.
const form = document.getElementById("set-up");
const live = document.getElementById("live");
let waits = 0;
let asked = 0;

async function draw() {
  const mine = ++asked;
  const sent = new FormData(form);
  sent.set("do", "show");
  const answer = await fetch(form.action, { method: "POST", body: new URLSearchParams(sent) });
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const drawn = page.getElementById("live");
  if (drawn && mine === asked) {
    live.replaceChildren(...drawn.childNodes);
  }
}

if (form && live) {
  form.addEventListener("input", () => {
    clearTimeout(waits);
    waits = setTimeout(draw, 400);
  });
}
