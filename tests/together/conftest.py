"""What is checked of a game tells what it found, also where it stands in a module of its own."""

import pytest

pytest.register_assert_rewrite("tests.together.holding")
