"""A bar in the terminal that tells how far a long request is."""

from collections.abc import Iterator
from contextlib import contextmanager

from client import Tell
from rich.console import Console
from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn, TimeElapsedColumn

#: What the API calls what it does, in words for the host.
STEPS = {
    "waiting": "Sending",
    "reading": "Reading comments",
    "storing": "Storing comments",
    "merging": "Comparing with what was known",
    "stored": "Stored",
    "counting": "Counting",
    "done": "Done",
}


@contextmanager
def progress_bar() -> Iterator[Tell]:
    """What a request may tell its progress to; into a pipe it shows nothing."""
    console = Console(stderr=True)
    bar = Progress(
        TextColumn("{task.description}"),
        BarColumn(),
        MofNCompleteColumn(),
        TimeElapsedColumn(),
        console=console,
        transient=True,
        disable=not console.is_terminal,
    )
    with bar:
        task = bar.add_task(STEPS["waiting"], total=None)

        def tell(step: str, done: int, total: int) -> None:
            bar.update(task, description=STEPS.get(step, step), completed=done, total=total or None)

        yield tell
