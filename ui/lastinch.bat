@echo off
rem Last Inch. Builds itself on first use and when its sources have changed; needs JDK 17+ and Maven.
setlocal
for %%i in ("%~dp0..") do set "ROOT=%%~fi"
set "RUN=%ROOT%\ui\target\run"
set "JAR=%RUN%\lastinch-ui.jar"
set "SEEN=%RUN%\seen"
set "ARCHIVE=%RUN%\lastinch.jsa"
set "MEMORY=-Xmx256m -XX:+UseSerialGC"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"

call :fresh && goto run
call :build || exit /b 1

:run
set "OPTIONS=-Djava.awt.headless=true"
if "%~1"=="" set "OPTIONS=-XX:TieredStopAtLevel=1 -Djava.awt.headless=true"
for %%c in (pour new alloys moulds help --help -h --version) do (
  if "%~1"=="%%c" set "OPTIONS=-XX:TieredStopAtLevel=1 -Djava.awt.headless=true"
)
for %%a in (%*) do if "%%~a"=="plane" (
  set "MEMORY=-Xmx1g -XX:+UseSerialGC"
  set "OPTIONS=-Djava.awt.headless=true"
)
if "%~1"=="desk" set "OPTIONS="
if exist "%ARCHIVE%" set OPTIONS=%OPTIONS% -XX:SharedArchiveFile="%ARCHIVE%" -Xshare:auto -Xlog:disable
"%JAVA%" %MEMORY% %OPTIONS% -jar "%JAR%" %*
exit /b %ERRORLEVEL%

rem Compares the sources with the copy kept by the last build; 0 when nothing differs.
:fresh
if not exist "%JAR%" exit /b 1
if not exist "%SEEN%" exit /b 1
for %%m in (solver cases ui) do (
  robocopy "%ROOT%\%%m\src\main" "%SEEN%\%%m\src" /MIR /L /NJH /NJS /NFL /NDL /NP >nul
  if errorlevel 1 exit /b 1
  robocopy "%ROOT%\%%m" "%SEEN%\%%m" pom.xml /L /NJH /NJS /NFL /NDL /NP >nul
  if errorlevel 1 exit /b 1
)
robocopy "%ROOT%" "%SEEN%" pom.xml /L /NJH /NJS /NFL /NDL /NP >nul
if errorlevel 1 exit /b 1
exit /b 0

:build
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo lastinch: no Java found: install a JDK, 17 or newer 1>&2
  exit /b 1
)
where mvn >nul 2>&1
if errorlevel 1 (
  echo lastinch: no Maven found ^(mvn^): it is needed to build the program 1>&2
  exit /b 1
)
if exist "%JAR%" (
  echo lastinch: the sources have changed; building, about half a minute ... 1>&2
) else (
  echo lastinch: first use; building, a minute or so ... 1>&2
)
if not exist "%RUN%" mkdir "%RUN%"
if exist "%SEEN%" rmdir /s /q "%SEEN%"
for %%m in (solver cases ui) do (
  robocopy "%ROOT%\%%m\src\main" "%SEEN%.new\%%m\src" /MIR /NJH /NJS /NFL /NDL /NP >nul
  robocopy "%ROOT%\%%m" "%SEEN%.new\%%m" pom.xml /NJH /NJS /NFL /NDL /NP >nul
)
robocopy "%ROOT%" "%SEEN%.new" pom.xml /NJH /NJS /NFL /NDL /NP >nul
pushd "%ROOT%"
call mvn -B -q -Dquick -pl ui -am package >"%RUN%\build.log" 2>&1
if errorlevel 1 (
  type "%RUN%\build.log" 1>&2
  echo lastinch: the build failed; what Maven said stands above 1>&2
  popd
  exit /b 1
)
move "%SEEN%.new" "%SEEN%" >nul
if exist "%ARCHIVE%" del /f /q "%ARCHIVE%"
"%JAVA%" -XX:DumpLoadedClassList="%RUN%\loaded" %MEMORY% -Djava.awt.headless=true -jar "%JAR%" pour cases\demo\feather-sand-flat.yaml --out "%RUN%\pictures" >nul 2>&1 <nul
"%JAVA%" -Xshare:dump -XX:SharedClassListFile="%RUN%\loaded" -XX:SharedArchiveFile="%ARCHIVE%" -Xlog:disable %MEMORY% -jar "%JAR%" >nul 2>&1 <nul
if exist "%RUN%\pictures" rmdir /s /q "%RUN%\pictures"
popd
exit /b 0
