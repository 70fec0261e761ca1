// One key for each ruling, while a comment is in focus. Without this script the buttons do the same.
const comments = [...document.querySelectorAll(".comment")];

function isTyping(target) {
  return target.matches("input:not([type=checkbox], [type=radio]), textarea, select");
}

function goTo(comment) {
  if (comment) {
    comment.focus();
    comment.scrollIntoView({ block: "nearest" });
  }
}

function press(comment, key) {
  const button = comment.querySelector(`button[data-key="${CSS.escape(key)}"]`);
  if (button) {
    button.form.requestSubmit(button);
    return true;
  }
  return false;
}

for (const [place, comment] of comments.entries()) {
  comment.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.altKey || event.metaKey || isTyping(event.target)) {
      return;
    }
    const key = event.key.toLowerCase();
    if (key === "j") {
      goTo(comments[place + 1]);
    } else if (key === "k") {
      goTo(comments[place - 1]);
    } else if (key === "r") {
      comment.querySelector("details").open = true;
      comment.querySelector("input[name=reason]").focus();
    } else if (!/^[0-9btl]$/.test(key) || !press(comment, key)) {
      return;
    }
    event.preventDefault();
  });
}

const target = location.hash && document.getElementById(location.hash.slice(1));
if (target && comments.includes(target)) {
  goTo(target);
} else if (document.querySelector(".notice.done") && comments.length) {
  goTo(comments[0]);
}
