"""Runs a notebook through a Jupyter client over the wire, signs it with its outputs and prints it."""
import sys

import nbformat
from nbclient import NotebookClient
from nbformat.sign import NotebookNotary

path, folder = sys.argv[1:3]
notebook = nbformat.read(path, as_version=4)
NotebookClient(
    notebook, kernel_name="tslab", timeout=120, resources={"metadata": {"path": folder}}
).execute()
NotebookNotary().sign(notebook)
print(nbformat.writes(notebook))
