"""Runs a notebook through a Jupyter client over the wire and prints it with its outputs."""
import sys

import nbformat
from nbclient import NotebookClient

path, folder = sys.argv[1:3]
notebook = nbformat.read(path, as_version=4)
NotebookClient(
    notebook, kernel_name="tslab", timeout=120, resources={"metadata": {"path": folder}}
).execute()
print(nbformat.writes(notebook))
