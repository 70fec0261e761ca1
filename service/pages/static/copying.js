// Buttons that copy words. Without this script the words are marked and copied by hand.
for (const button of document.querySelectorAll("button.copy")) {
  const words = document.getElementById(button.dataset.of);
  const label = button.firstChild;
  button.hidden = false;
  button.addEventListener("click", async () => {
    try {
      await navigator.clipboard.writeText(words.value);
    } catch {
      words.select();
      document.execCommand("copy");
    }
    label.textContent = "Copied";
    setTimeout(() => { label.textContent = "Copy"; }, 3000);
  });
}
