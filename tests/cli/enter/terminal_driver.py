"""Runs a program on a pseudo-terminal: waits for texts on its screen and types.

Arguments: seconds to wait at most, a JSON list of steps, then the command.
A step is {"wait": text} or {"type": text} or {"kill": signal number}. What the
program wrote goes to standard output; the last line says how it ended.
"""

import fcntl
import json
import os
import pty
import select
import struct
import sys
import termios
import time

limit, steps, command = float(sys.argv[1]), json.loads(sys.argv[2]), sys.argv[3:]
pid, terminal = pty.fork()
if pid == 0:
    fcntl.ioctl(0, termios.TIOCSWINSZ, struct.pack("HHHH", 40, 100, 0, 0))
    os.execvp(command[0], command)

screen = b""
seen = 0


def read(seconds):
    """Whether something was written within so many seconds."""
    global screen
    if not select.select([terminal], [], [], seconds)[0]:
        return True
    try:
        part = os.read(terminal, 65536)
    except OSError:
        return False
    screen += part
    return part != b""


def wait_for(text):
    global seen
    end = time.monotonic() + limit
    while text not in screen[seen:]:
        if time.monotonic() > end or not read(0.2):
            sys.stdout.buffer.write(screen)
            sys.exit("never shown: " + text.decode())
    seen = screen.index(text, seen) + len(text)


for step in steps:
    if "wait" in step:
        wait_for(step["wait"].encode())
    elif "type" in step:
        os.write(terminal, step["type"].encode())
    else:
        os.kill(pid, step["kill"])
end = time.monotonic() + limit
while time.monotonic() < end and read(0.2):
    if os.waitid(os.P_PID, pid, os.WEXITED | os.WNOHANG | os.WNOWAIT) is not None:
        while read(0) and select.select([terminal], [], [], 0.1)[0]:
            pass
        break
status = os.waitstatus_to_exitcode(os.waitpid(pid, 0)[1])
sys.stdout.buffer.write(screen + b"\nended with " + str(status).encode())
