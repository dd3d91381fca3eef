# SPDX-License-Identifier: MIT
"""Runs the recipe for Conan with stand-ins for what Conan gives it: exports the sources, configures and installs them.

    conan_stand_in.py SOURCE WORK CMAKE VERSION"""
import fnmatch
import importlib.util
import os
import shutil
import subprocess
import sys
import types

source, work, cmake, version = sys.argv[1:]


class ConanFile:
    info = types.SimpleNamespace(clear=lambda: None)

    def __init__(self):
        self.recipe_folder = os.path.join(source, "cmake", "recipes", "conan")
        self.export_sources_folder = os.path.join(work, "sources")
        properties = {}
        self.cpp_info = types.SimpleNamespace(properties=properties, set_property=properties.__setitem__)


class CMakeToolchain:
    made = None

    def __init__(self, _):
        self.cache_variables = {}
        CMakeToolchain.made = self

    def generate(self):
        pass


class CMake:
    def __init__(self, recipe):
        self.tree, self.build = recipe.export_sources_folder, os.path.join(work, "build")

    def configure(self):
        variables = [f"-D{name}={value}" for name, value in CMakeToolchain.made.cache_variables.items()]
        subprocess.run([cmake, "-S", self.tree, "-B", self.build, f"-DCMAKE_INSTALL_PREFIX={work}/package", *variables],
                       check=True, stdout=subprocess.DEVNULL)

    def install(self):
        subprocess.run([cmake, "--install", self.build], check=True, stdout=subprocess.DEVNULL)


def copy(_, pattern, src, dst):
    for folder, _, files in os.walk(src):
        for name in files:
            path = os.path.relpath(os.path.join(folder, name), src)
            if not path.startswith(("build", ".git")) and fnmatch.fnmatch(path, pattern):
                os.makedirs(os.path.dirname(os.path.join(dst, path)), exist_ok=True)
                shutil.copy(os.path.join(src, path), os.path.join(dst, path))


def load(_, path):
    with open(path, encoding="utf-8") as file:
        return file.read()


for name, content in {"conan": {"ConanFile": ConanFile}, "conan.tools": {},
                      "conan.tools.cmake": {"CMake": CMake, "CMakeToolchain": CMakeToolchain},
                      "conan.tools.files": {"copy": copy, "load": load}}.items():
    sys.modules[name] = types.ModuleType(name)
    vars(sys.modules[name]).update(content)
spec = importlib.util.spec_from_file_location("recipe", os.path.join(source, "cmake", "recipes", "conan", "conanfile.py"))
recipe_file = importlib.util.module_from_spec(spec)
spec.loader.exec_module(recipe_file)

shutil.rmtree(work, ignore_errors=True)
recipe = recipe_file.Bifolium()
recipe.set_version()
assert recipe.version == version, recipe.version
recipe.export_sources()
recipe.generate()
recipe.build()
recipe.package()
recipe.package_id()
recipe.package_info()
assert recipe.cpp_info.properties == {"cmake_find_mode": "none"}
for path in ("include/bifolium/bifolium.hpp", recipe.cpp_info.builddirs[0] + "/bifolium-config.cmake"):
    assert os.path.exists(os.path.join(work, "package", path)), path
