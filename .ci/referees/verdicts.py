"""How a referee speaks: one line a check, `ok …` or `FAIL …`, which .ci/run counts."""
import sys


class Verdicts:
    def __init__(self):
        self.failed = 0

    def of(self, what, refusals):
        """One check that passes when there is nothing to refuse."""
        refusals = list(refusals)
        if not refusals:
            print(f"ok {what}")
            return
        self.failed += 1
        print(f"FAIL {what}")
        for refusal in refusals[:8]:
            print(f"     {refusal}")
        if len(refusals) > 8:
            print(f"     and {len(refusals) - 8} more")

    def refused(self, what, refusals, rule):
        """One check that passes when a spoiled file is refused, and for the right reason."""
        refusals = list(refusals)
        if any(r.startswith(rule) for r in refusals):
            print(f"ok refused: {what}")
        else:
            self.of(f"not refused: {what}", [f"no refusal began with “{rule}”", *refusals])

    def end(self):
        sys.stdout.flush()
        sys.exit(1 if self.failed else 0)
