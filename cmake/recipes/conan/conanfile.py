# SPDX-License-Identifier: MIT
"""Packs the headers from this source tree for Conan 2:

    conan create <source>/cmake/recipes/conan

Written by Conan's documentation; a test runs it with stand-ins for Conan's classes, as Conan itself was not at hand."""
import os
import re

from conan import ConanFile
from conan.tools.cmake import CMake, CMakeToolchain
from conan.tools.files import copy, load


class Bifolium(ConanFile):
    name = "bifolium"
    description = "Bibliographic format and sheet arithmetic of early printed books"
    license = "MIT"
    topics = ("bibliography", "early printed books", "header-only")
    settings = "os", "arch", "compiler", "build_type"
    package_type = "header-library"
    no_copy_source = True

    def _tree(self):
        return os.path.join(self.recipe_folder, os.pardir, os.pardir, os.pardir)

    def set_version(self):
        header = load(self, os.path.join(self._tree(), "include", "bifolium", "core", "version.hpp"))
        self.version = ".".join(re.findall(r"^#define BIFOLIUM_VERSION_\w+ (\d+)$", header, re.MULTILINE))

    def export_sources(self):
        for pattern in ("CMakeLists.txt", "README.md", "include/*", "cmake/*"):
            copy(self, pattern, src=self._tree(), dst=self.export_sources_folder)

    def generate(self):
        toolchain = CMakeToolchain(self)
        toolchain.cache_variables["BUILD_TESTING"] = False
        toolchain.generate()

    def build(self):
        CMake(self).configure()

    def package(self):
        CMake(self).install()

    def package_id(self):
        self.info.clear()

    def package_info(self):
        # the package has its own configuration for find_package, with the target bifolium::bifolium
        self.cpp_info.set_property("cmake_find_mode", "none")
        self.cpp_info.builddirs = [os.path.join("share", "cmake", "bifolium")]
        self.cpp_info.bindirs = []
        self.cpp_info.libdirs = []
